export interface InHookup {
  readonly hookup: string;
  readonly hookupName: string;
}
