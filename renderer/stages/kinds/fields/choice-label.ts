import { fuseFamilyNames } from '../../../../core/index.ts';

const choices: Record<string, string> = {
  current: 'a fixed current',
  power: 'a fixed power',
  resistance: 'as a resistor',
  limits: 'holds the current',
  shutsDown: 'switches off',
  sags: 'sags on',
  leadAcid: 'lead-acid',
  agm: 'AGM',
  lifepo4: 'LiFePO4',
  ...fuseFamilyNames,
  termination: 'a dummy load',
  antenna: 'an antenna',
  receiver: 'a receiver’s input',
  rs232: 'RS-232',
  ttl5: '5 V logic',
  ttl3v3: '3.3 V logic',
  openCollector: 'open collector',
  usb: 'USB',
  ethernet: 'Ethernet',
  drives: 'puts out',
  listens: 'takes in',
  bus: 'both on one bus',
};

/** What a choice is called in a form. */
export const choiceLabel = (value: string): string => choices[value] ?? value;
