import { bindingNamed } from "./bindingNamed";
import { HostError } from "./HostError";

/** What a function gives for some arguments: its result, or the host's error it throws. Any other error is thrown on, for no function may. */
export function outcomeOf(
  name: string,
  args: readonly unknown[],
): { readonly result: unknown } | { readonly error: HostError } {
  try {
    return { result: bindingNamed(name)(...args) };
  } catch (error) {
    if (error instanceof HostError) return { error };
    throw error;
  }
}
