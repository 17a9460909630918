import { useEffect, useState } from "react";

const DARK = "(prefers-color-scheme: dark)";

/** "light" or "dark", as the system asks, and as it changes. */
export function useColourTheme(): "light" | "dark" {
  const [isDark, setDark] = useState(() => matchMedia(DARK).matches);
  useEffect(() => {
    const query = matchMedia(DARK);
    const follow = (): void => setDark(query.matches);
    query.addEventListener("change", follow);
    return () => query.removeEventListener("change", follow);
  }, []);
  return isDark ? "dark" : "light";
}
