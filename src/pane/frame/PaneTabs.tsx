import { Tab, TabList } from "@fluentui/react-components";
import { memo } from "react";
import type { PaneView } from "./PaneView";
import { useFrameStyles } from "./useFrameStyles";

interface PaneTabsProps {
  readonly views: readonly PaneView[];
  readonly shownId: string;
  readonly onChoose: (viewId: string) => void;
}

/** The tabs of the views, drawn again only when another view is chosen; a count beside a word follows by itself. */
export const PaneTabs = memo(function PaneTabs({ views, shownId, onChoose }: PaneTabsProps) {
  const styles = useFrameStyles();
  return (
    <TabList
      className={styles.tabs}
      aria-label="Views"
      selectedValue={shownId}
      onTabSelect={(_, { value }) => onChoose(String(value))}
    >
      {views.map(({ id, label, Icon, Count }) => (
        <Tab key={id} value={id} id={`pane-tab-${id}`} aria-controls={`pane-view-${id}`} icon={<Icon />}>
          {label}
          {Count !== undefined && <Count />}
        </Tab>
      ))}
    </TabList>
  );
});
