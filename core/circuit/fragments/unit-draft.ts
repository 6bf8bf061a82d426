import { kindOf, settingsIn } from '../../station/parts.ts';
import type { Hookup, Station, Unit } from '../../station/schema/schema.ts';
import type { Condition, UnitKind } from '../../station/schema/unit-kind.ts';
import type { Gate } from '../circuit.ts';
import type { FragmentDraft } from './fragment-draft.ts';

/** A unit in a hook-up while its fragment is being put together; contacts, ports and actors go by the unit's own names. */
export class UnitDraft {
  readonly kind: UnitKind;
  private readonly settings: Readonly<Record<string, string>>;

  constructor(
    readonly fragment: FragmentDraft,
    readonly station: Station,
    hookup: Hookup,
    readonly unit: Unit,
  ) {
    this.kind = kindOf(station, unit);
    this.settings = settingsIn(this.kind, unit, hookup);
  }

  /** The number of a contact: `key.tip`, `@joint`, `chassis`. */
  node(contact: string): number {
    return this.fragment.node(this.named(contact));
  }

  rfPort(port: string): number {
    return this.fragment.rfPort(this.named(port));
  }

  /** Gives an actor its number. */
  nameActor(actor: string) {
    const { actorOf } = this.fragment;
    actorOf.set(this.named(actor), actorOf.size);
  }

  /** The number of an actor; undefined for one that was given none. */
  actor(actor: string): number | undefined {
    return this.fragment.actorOf.get(this.named(actor));
  }

  /** Where the parts of an element come from. */
  originOf(element: string) {
    return { type: 'element', unit: this.unit.id, element } as const;
  }

  /** What a condition becomes: a gate, or null where a setting rules the part out. */
  gateFor(condition: Condition | undefined): Gate | null {
    if (!condition) return [];
    for (const [setting, value] of Object.entries(condition.settings ?? {}))
      if (this.settings[setting] !== value) return null;
    const gate: { actor: number; on: boolean }[] = [];
    const add = (name: string, on: boolean) => {
      const actor = this.actor(name);
      if (actor !== undefined) gate.push({ actor, on });
    };
    for (const name of condition.on ?? []) add(name, true);
    for (const name of condition.off ?? []) add(name, false);
    if (condition.powered !== undefined) add('powered', condition.powered);
    return gate;
  }

  private named(own: string): string {
    return `${this.unit.id}.${own}`;
  }
}
