/** The site's name, as pages, cards and copied texts say it; its mark (`public/icon.svg`) and the README say the same. */
export const SITE_NAME = 'How Sure Is a Watt?';
