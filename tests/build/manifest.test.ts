import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEVELOPMENT_ADDRESS, manifestAddress } from "../../src/build/manifestAddress.mjs";
import { allElements, readXml, type XmlElement } from "./xmlElement";

/**
 * The rules of an add-in-only manifest for a task pane, checked by hand, since the vendor's own check is a web service.
 * Source: the vendor's published manifest reference ("Manifest reference", "How to find the proper order of manifest
 * elements", "Configure your Office Add-in to use a shared runtime").
 */
const path = join(__dirname, "../../manifest.xml");
const source = readFileSync(path, "utf8");
const root = readXml(source);
const elements = allElements(root);

const all = (name: string): XmlElement[] => elements.filter((element) => element.name === name);
const one = (name: string): XmlElement => {
  const found = all(name);
  if (found.length !== 1) throw new Error(`${found.length} elements ${name}`);
  return found[0] as XmlElement;
};
const under = (parent: XmlElement, name: string): XmlElement => {
  const found = parent.children.find((child) => child.name === name);
  if (found === undefined) throw new Error(`${parent.name} has no ${name}`);
  return found;
};
// An icon's images refer to resources under the same name; a resource is what has an id.
const resources = ["bt:Image", "bt:Url", "bt:String"]
  .flatMap(all)
  .filter((element) => element.attributes.id !== undefined);
const valueOf = (resid: string | undefined): string =>
  resources.find((resource) => resource.attributes.id === resid)?.attributes.DefaultValue ?? "";

/** What the vendor's own reader makes of a manifest; in a process of its own, since a part of it is no CommonJS. */
function vendorInfo(file: string): Record<string, unknown> {
  const script = `require(process.argv[1]).OfficeAddinManifest.readManifestFile(process.argv[2])
    .then((info) => process.stdout.write(JSON.stringify(info)))`;
  const answer = execFileSync(process.execPath, ["-e", script, require.resolve("office-addin-manifest"), file], {
    cwd: join(__dirname, "../.."),
    stdio: ["ignore", "pipe", "pipe"],
  });
  return JSON.parse(answer.toString()) as Record<string, unknown>;
}

const ORDERS: readonly (readonly [string, string])[] = [
  [
    "OfficeApp",
    "Id AlternateId Version ProviderName DefaultLocale DisplayName Description IconUrl HighResolutionIconUrl SupportUrl AppDomains Hosts Requirements DefaultSettings Permissions Dictionary VersionOverrides",
  ],
  ["VersionOverrides", "Description Requirements Hosts Resources WebApplicationInfo EquivalentAddins VersionOverrides"],
  ["DesktopFormFactor", "GetStarted FunctionFile ExtensionPoint"],
  ["GetStarted", "Title Description LearnMoreUrl"],
  ["Group", "Label Icon Control"],
  ["Control", "Label Supertip Icon Action"],
  ["Supertip", "Title Description"],
  ["Resources", "bt:Images bt:Urls bt:ShortStrings bt:LongStrings"],
];

test.each(ORDERS)("the parts of %s stand in the order of the schema", (name, order) => {
  const known = order.split(" ");
  for (const element of all(name)) {
    const places = element.children.map((child) => known.indexOf(child.name));
    expect(element.children.filter((_, index) => places[index] === -1).map((child) => child.name)).toEqual([]);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  }
});

test("the host's parts stand in order: runtimes, functions, then the desktop", () => {
  const host = all("Host").find((element) => element.attributes["xsi:type"] === "Workbook");
  expect(host?.children.map((child) => child.name)).toEqual(["Runtimes", "AllFormFactors", "DesktopFormFactor"]);
});

test("the functions' extension point names script, page, metadata and namespace", () => {
  const point = all("ExtensionPoint").find((element) => element.attributes["xsi:type"] === "CustomFunctions");
  expect(point?.children.map((child) => child.name)).toEqual(["Script", "Page", "Metadata", "Namespace"]);
});

test("it is a task pane add-in for workbooks with an id, a version and leave to write", () => {
  expect(root.attributes["xsi:type"]).toBe("TaskPaneApp");
  expect(one("Id").text).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-[1-5][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  expect(one("Version").text).toMatch(/^[1-9]\d*(\.\d+){2,3}$/);
  expect(one("Permissions").text).toBe("ReadWriteDocument");
  expect(all("Host").map((host) => host.attributes.Name ?? host.attributes["xsi:type"])).toEqual([
    "Workbook",
    "Workbook",
  ]);
});

test("it asks for the shared runtime and for functions of the requirement sets that they need", () => {
  expect(all("Set").map((set) => [set.attributes.Name, set.attributes.MinVersion])).toEqual([
    ["SharedRuntime", "1.1"],
    ["CustomFunctionsRuntime", "1.3"],
  ]);
});

test("one runtime of long life serves page, function file, pane and button alike", () => {
  const runtime = one("Runtime");
  expect(runtime.attributes.lifetime).toBe("long");
  const resid = runtime.attributes.resid;
  expect(under(one("Page"), "SourceLocation").attributes.resid).toBe(resid);
  expect(one("FunctionFile").attributes.resid).toBe(resid);
  const action = one("Action");
  expect(action.attributes["xsi:type"]).toBe("ShowTaskpane");
  expect(under(action, "SourceLocation").attributes.resid).toBe(resid);
  expect(valueOf(resid)).toBe(under(one("DefaultSettings"), "SourceLocation").attributes.DefaultValue);
  expect(all("TaskpaneId")).toEqual([]);
});

test("the namespace is TACK", () => {
  expect(valueOf(one("Namespace").attributes.resid)).toBe("TACK");
});

test("every resid names a resource that exists, and every resource is used", () => {
  const used = new Set(elements.map((element) => element.attributes.resid).filter((resid) => resid !== undefined));
  const defined = resources.map((resource) => resource.attributes.id ?? "");
  expect([...used].sort()).toEqual([...defined].sort());
  expect(new Set(defined).size).toBe(defined.length);
  for (const id of defined) expect(id.length).toBeLessThanOrEqual(32);
});

test("ids of controls and groups are unique and of letters, digits, dots and hyphens", () => {
  const ids = [...all("Group"), ...all("Control")].map((element) => element.attributes.id ?? "");
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) expect(id).toMatch(/^[A-Za-z][\w.-]{0,124}$/);
});

test("texts keep to their lengths: 125 short, 250 long", () => {
  const strings = (parent: string): string[] =>
    one(parent).children.map((child) => child.attributes.DefaultValue ?? "");
  for (const text of strings("bt:ShortStrings")) expect(text.length).toBeLessThanOrEqual(125);
  for (const text of strings("bt:LongStrings")) expect(text.length).toBeLessThanOrEqual(250);
  expect(under(root, "DisplayName").attributes.DefaultValue?.length).toBeLessThanOrEqual(125);
  expect(under(root, "Description").attributes.DefaultValue?.length).toBeLessThanOrEqual(250);
  expect(one("ProviderName").text.length).toBeLessThanOrEqual(125);
  for (const text of [...strings("bt:ShortStrings"), ...strings("bt:LongStrings")]) expect(text).not.toBe("");
});

test("every address is https", () => {
  // The names of XML namespaces are no addresses.
  const addresses = elements.flatMap((element) =>
    [
      ...Object.entries(element.attributes)
        .filter(([key]) => !key.startsWith("xmlns"))
        .map(([, value]) => value),
      element.text,
    ].filter((text) => /:\/\//.test(text)),
  );
  expect(addresses.length).toBeGreaterThan(10);
  for (const address of addresses) expect(address).toMatch(/^https:\/\//);
});

test("icons come in 16, 32 and 80 for the ribbon and in 32 and 64 for the list of add-ins", () => {
  for (const icon of all("Icon")) {
    const sizes = icon.children.map((image) => [image.attributes.size, valueOf(image.attributes.resid)]);
    expect(sizes).toEqual([16, 32, 80].map((size) => [String(size), `${DEVELOPMENT_ADDRESS}/icons/icon-${size}.png`]));
  }
  expect(one("IconUrl").attributes.DefaultValue).toBe(`${DEVELOPMENT_ADDRESS}/icons/icon-32.png`);
  expect(one("HighResolutionIconUrl").attributes.DefaultValue).toBe(`${DEVELOPMENT_ADDRESS}/icons/icon-64.png`);
});

test("the vendor's own reader reads it", () => {
  const info = vendorInfo(path);
  expect([info.id, info.version, info.displayName]).toEqual([one("Id").text, one("Version").text, "Tackstitch"]);
  expect([info.hosts, info.officeAppType, info.permissions]).toEqual([
    ["Workbook"],
    "TaskPaneApp",
    "ReadWriteDocument",
  ]);
  expect(info.defaultSettings).toMatchObject({ sourceLocation: `${DEVELOPMENT_ADDRESS}/taskpane.html` });
});

describe("for a deployment", () => {
  const folder = mkdtempSync(join(tmpdir(), "manifest-"));
  afterAll(() => rmSync(folder, { recursive: true }));

  test("no occurrence of the development address stays behind, and the vendor's reader still reads it", () => {
    const deployed = manifestAddress(source, "https://stitch.example.org/tack/", "1.2.0.0");
    expect(deployed).not.toContain("localhost");
    expect(deployed.match(/https:\/\/stitch\.example\.org\/tack\/taskpane\.html/g)).toHaveLength(2);
    expect(deployed).toContain("<AppDomain>https://stitch.example.org</AppDomain>");
    const file = join(folder, "manifest.xml");
    writeFileSync(file, deployed);
    const info = vendorInfo(file);
    expect([info.version, info.iconUrl]).toEqual(["1.2.0.0", "https://stitch.example.org/tack/icons/icon-32.png"]);
  });

  test("everything but addresses and version stays as it was", () => {
    const deployed = manifestAddress(source, "https://stitch.example.org", "1.0.0.1");
    expect(deployed.replaceAll("https://stitch.example.org", DEVELOPMENT_ADDRESS).replace("1.0.0.1", "1.0.0.0")).toBe(
      source,
    );
  });

  test.each([
    "http://stitch.example.org",
    "stitch.example.org",
    "",
    "https://stitch.example.org/?a=1",
    "https://a.example.org/#x",
  ])("the address %j is refused in one sentence", (address) => {
    expect(() => manifestAddress(source, address)).toThrow(
      `"${address}" cannot be used as the address; give one that begins with https://`,
    );
  });

  test.each(["2", "1.0.x", "v1.0.0"])("the version %j is refused in one sentence", (version) => {
    expect(() => manifestAddress(source, "https://stitch.example.org", version)).toThrow(
      `"${version}" cannot be used as the version`,
    );
  });
});
