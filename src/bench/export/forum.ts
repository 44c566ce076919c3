/** Longest address that boards, mail and chats commonly leave whole, in characters (common practice, no source). */
export const LONGEST_FOR_FORUM = 2000;

/** An address as it goes into a text that others read, or the sentence that stands in its place. */
export const forumLink = (address: string | undefined, tooLong: string) =>
  address !== undefined && address.length <= LONGEST_FOR_FORUM ? { link: address } : { withoutLink: tooLong };
