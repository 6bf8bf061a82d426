/** The order of names that end in numbers as people count: D2 before D10. Made once, as making it takes long. */
export const asPeopleCount = new Intl.Collator('en', { numeric: true }).compare;
