/** A place of the drawing: a unit, one of its ports, a contact of it; or a cable, or one end of it. */
export type Place =
  | { readonly unit: string; readonly port?: string; readonly contact?: string }
  | { readonly cable: string; readonly end?: 'a' | 'b' };
