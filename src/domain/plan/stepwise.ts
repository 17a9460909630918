/** Long work that stops for breath every few milliseconds, so that whoever runs it can do other things between, or leave off. */
export type Stepwise<T> = Generator<undefined, T, undefined>;
