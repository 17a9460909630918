import { useHandOverStyles } from "./useHandOverStyles";

/** A page as it will be printed or saved, in a frame in which nothing can run. */
export function PaperPreview({ title, html }: { readonly title: string; readonly html: string }) {
  const styles = useHandOverStyles();
  return <iframe className={styles.page} title={`Preview: ${title}`} sandbox="" srcDoc={html} />;
}
