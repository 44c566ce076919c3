/** The one door to the computation: everything public is exported here, by name. */
export type {};
