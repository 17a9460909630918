/** What the grid's table filters write for a blank cell among the values that stay in sight. */
export const emptyFilterValue = "__UNIVER_TABLE_FILTER_EMPTY__";
