import { LocaleType, LogLevel, merge, mergeLocales, Univer, type Plugin, type PluginCtor } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import type { BaseFunction, IFunctionInfo } from "@univerjs/engine-formula";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import conditionalFormattingWords from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import dataValidationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsFilterPreset } from "@univerjs/preset-sheets-filter";
import filterWords from "@univerjs/preset-sheets-filter/locales/en-US";
import { UniverSheetsSortPreset } from "@univerjs/preset-sheets-sort";
import sortWords from "@univerjs/preset-sheets-sort/locales/en-US";
import { UniverSheetsTablePreset } from "@univerjs/preset-sheets-table";
import tableWords from "@univerjs/preset-sheets-table/locales/en-US";
import { defaultTheme } from "@univerjs/themes";
import { mendArrayConstants } from "./mendArrayConstants";
import { mendLexer } from "./mendLexer";
import { mendTextLiterals } from "./mendTextLiterals";
import { ownWords } from "./ownWords";

export type EngineFunction = readonly [typeof BaseFunction, string];

export interface GridParts {
  readonly container: HTMLElement;
  readonly functions: readonly EngineFunction[];
  readonly descriptions: readonly IFunctionInfo[];
  readonly dark: boolean;
}

export interface Grid {
  readonly univer: Univer;
  readonly api: FUniver;
}

/** The grid with its engine, without a workbook. */
export function createGrid({ container, functions, descriptions, dark }: GridParts): Grid {
  mendLexer();
  mendTextLiterals();
  mendArrayConstants();
  const univer = new Univer({
    theme: defaultTheme,
    darkMode: dark,
    locale: LocaleType.EN_US,
    logLevel: LogLevel.WARN,
    locales: {
      // The presets' words lie side by side; ours replace a few inside of them.
      [LocaleType.EN_US]: merge(
        mergeLocales(coreWords, tableWords, filterWords, sortWords, dataValidationWords, conditionalFormattingWords),
        ownWords,
      ),
    },
  });
  const presets = [
    UniverSheetsCorePreset({
      container,
      toolbar: false,
      formula: {
        function: functions.map(([type, name]) => [type, name]),
        description: [...descriptions],
        initialFormulaComputing: 0,
      },
    }),
    UniverSheetsTablePreset(),
    UniverSheetsFilterPreset(),
    UniverSheetsSortPreset(),
    UniverSheetsDataValidationPreset({ showEditOnDropdown: false, showSearchOnDropdown: false }),
    UniverSheetsConditionalFormattingPreset(),
  ];
  // Presets repeat one another's plugins; a plugin may be registered once, and the last options win.
  const plugins = new Map<string, readonly [PluginCtor<Plugin>, unknown]>();
  for (const preset of presets) {
    for (const entry of preset.plugins) {
      const [plugin, options] = Array.isArray(entry) ? entry : [entry, undefined];
      plugins.delete(plugin.pluginName);
      plugins.set(plugin.pluginName, [plugin, options]);
    }
  }
  for (const [plugin, options] of plugins.values()) {
    // A table's anchor would cover a frozen heading row.
    const extra = plugin.pluginName === "SHEET_TABLE_UI_PLUGIN" ? { hideAnchor: true } : {};
    univer.registerPlugin(plugin, { ...(options as object | undefined), ...extra });
  }
  return { univer, api: FUniver.newAPI(univer) };
}
