/** Names the custom XML part that keeps our texts. */
export const keptNamespace = "urn:tackstitch:kept";
