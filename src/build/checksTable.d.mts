export function checksTable(
  rules: readonly {
    readonly id: string;
    readonly about: string;
    readonly why: string;
    readonly severity: string;
    readonly fixable: boolean;
  }[],
): string;
