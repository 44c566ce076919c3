/** Names of the keys of `Of` whose value is free text or a number as typed, chosen ones left out. */
export type TypedKey<Of, Chosen extends keyof Of> = Exclude<keyof Of, Chosen> & string;
