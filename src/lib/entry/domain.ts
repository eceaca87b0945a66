// What the library's entry asks of every argument, said once as data: checked where a value comes in, never in an inner loop.

/** Why an argument was not accepted: where in it, and what belongs there. */
type Complaint = Readonly<{ at: string; must: string }>;

/** The values an argument may have. `accepts` is never there: it lets the compiler see that every part of a type has its domain. */
export type Domain<T> = Readonly<{ complaint: (value: unknown) => Complaint | undefined; accepts?: T }>;

/** What the entry answers in place of a result where an argument lies outside its domain: `at` says which part, `must` what belongs there. */
export type NotAccepted = Readonly<{ ok: false; reason: 'argument-not-accepted'; at: string; must: string }>;

const complain = (must: string): Complaint => ({ at: '', must });

/** Any finite number from `least` to `most`, both included. */
export function between(least: number, most: number): Domain<number> {
  const wrong = complain(`be a number from ${least} to ${most}`);
  return {
    complaint: (value) => (typeof value === 'number' && value >= least && value <= most ? undefined : wrong),
  };
}

/** Any number above 0, up to `most`. */
export function above0(most: number): Domain<number> {
  const wrong = complain(`be a number above 0, up to ${most}`);
  return {
    complaint: (value) => (typeof value === 'number' && value > 0 && value <= most ? undefined : wrong),
  };
}

/** A whole number from `least` to `most`. */
export function whole(least: number, most: number): Domain<number> {
  const wrong = complain(`be a whole number from ${least} to ${most}`);
  return {
    complaint: (value) =>
      Number.isInteger(value) && typeof value === 'number' && value >= least && value <= most
        ? undefined
        : wrong,
  };
}

/** One of the words of a list. */
export function oneOf<const T extends string>(words: readonly T[]): Domain<T> {
  const wrong = complain(`be one of: ${words.join(', ')}`);
  return { complaint: (value) => (words.some((word) => word === value) ? undefined : wrong) };
}

/** The mark of a result that was not refused. */
export const ok: Domain<true> = {
  complaint: (value) => (value === true ? undefined : complain('be true: this was refused, or made by hand')),
};
export const yesOrNo: Domain<boolean> = {
  complaint: (value) => (typeof value === 'boolean' ? undefined : complain('be true or false')),
};
export const text: Domain<string> = {
  complaint: (value) => (typeof value === 'string' ? undefined : complain('be a text')),
};

/** A function: what it is given and gives back is its writer's business. */
export function called<T extends (...args: never) => unknown>(): Domain<T> {
  return { complaint: (value) => (typeof value === 'function' ? undefined : complain('be a function')) };
}

/** Left out, or as said: for parts and arguments that may be left out. */
export function maybe<T>(domain: Domain<T>): Domain<T> {
  return { complaint: (value) => (value === undefined ? undefined : domain.complaint(value)) };
}

/** Either of two. What it complains of is the second's business. */
export function either<A, B>(one: Domain<A>, other: Domain<B>): Domain<A | B> {
  return { complaint: (value) => one.complaint(value) && other.complaint(value) };
}

/** A list of `least` to `most` things of one kind; any array-like list will do. */
export function list<T>(item: Domain<T>, most: number, least = 0): Domain<readonly T[] & ArrayLike<T>> {
  const wrong = complain(`be a list of ${least === most ? least : `${least} to ${most}`}`);
  return {
    complaint: (value) => {
      if (!isListLike(value) || value.length < least || value.length > most) return wrong;
      for (let i = 0; i < value.length; i++) {
        const found = item.complaint(value[i]);
        if (found) return { ...found, at: `[${i}]${found.at}` };
      }
      return undefined;
    },
  };
}

/** A list with at least one thing in it. */
export function some<T>(item: Domain<T>, most: number): Domain<readonly [T, ...T[]]> {
  return { complaint: list(item, most, 1).complaint };
}

function isListLike(value: unknown): value is ArrayLike<unknown> {
  return Array.isArray(value) || ArrayBuffer.isView(value);
}

/** An object with at least these parts. */
export function shape<T extends object>(parts: { readonly [K in keyof T]-?: Domain<T[K]> }): Domain<T> {
  const entries: readonly (readonly [string, Domain<unknown>])[] = Object.entries<Domain<unknown>>(parts);
  const wrong = complain(`be an object with ${entries.map(([key]) => key).join(', ')}`);
  return {
    complaint: (value) => {
      if (typeof value !== 'object' || value === null) return wrong;
      for (const [key, part] of entries) {
        const found = part.complaint(Reflect.get(value, key));
        if (found) return { ...found, at: `.${key}${found.at}` };
      }
      return undefined;
    },
  };
}

/** One of a kind for each of some names. */
export function each<K extends string, T>(
  names: readonly K[],
  part: Domain<T>,
): Domain<Readonly<Record<K, T>>> {
  const parts = Object.fromEntries(names.map((name) => [name, part]));
  return { complaint: shape<Record<string, T>>(parts).complaint };
}

/** As said, and with its parts in order among themselves. `must` is read after "must". */
export function also<T>(domain: Domain<T>, isRight: (value: T) => boolean, must: string): Domain<T> {
  const accepts = (value: unknown): value is T => domain.complaint(value) === undefined;
  return {
    complaint: (value) =>
      accepts(value) ? (isRight(value) ? undefined : complain(must)) : domain.complaint(value),
  };
}

/** The function with the same arguments, and one more answer. */
export type Checked<F extends (...args: never) => unknown> = (
  ...args: Parameters<F>
) => ReturnType<F> | NotAccepted;

type Domains<A extends readonly unknown[]> = { readonly [I in keyof A]-?: Domain<A[I]> };

function firstComplaint(
  names: string,
  domains: readonly Domain<unknown>[],
  args: readonly unknown[],
): Complaint | undefined {
  for (const [i, domain] of domains.entries()) {
    const found = domain.complaint(args[i]);
    if (found) return { at: `${names.split(' ')[i] ?? i}${found.at}`, must: found.must };
  }
  return undefined;
}

/** The function, for results with an `ok`: an argument outside its domain is refused like anything else, with a reason. `names` are those of the arguments. */
export function refusing<A extends readonly unknown[], R>(
  inside: (...args: A) => R,
  names: string,
  ...domains: Domains<A>
): (...args: A) => R | NotAccepted {
  return (...args) => {
    const found = firstComplaint(names, domains, args);
    return found ? { ok: false, reason: 'argument-not-accepted', ...found } : inside(...args);
  };
}

/** The function, for bare results: an argument outside its domain is a fault of the program that calls, and throws a RangeError with a sentence. */
export function throwing<A extends readonly unknown[], R>(
  inside: (...args: A) => R,
  names: string,
  ...domains: Domains<A>
): (...args: A) => R {
  return (...args) => {
    const found = firstComplaint(names, domains, args);
    if (found) throw new RangeError(`${inside.name}: ${found.at} must ${found.must}.`);
    return inside(...args);
  };
}
