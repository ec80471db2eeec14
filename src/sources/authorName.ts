/** `Ball, D. M.` and `Ball, D. M. (ed.)` are people; a body is written as it calls itself, without initials behind a comma (`Law Supply, Inc.` is none). */
const person =
  /^(?<family>[^,]+), (?<given>\p{Lu}\p{Ll}?\.(?:[ -]?(?:\p{Lu}\p{Ll}?\.|\p{Lu}\p{L}+))*(?:, (?:Jr|Sr|II|III)\.?)?)(?: ?\((?<role>eds?\.)\))?$/u;

export interface Person {
  readonly family: string;
  readonly given: string;
  readonly role?: string;
}

/** The parts of a person's name, or undefined for a body. */
export function readPerson(author: string): Person | undefined {
  const { family, given, role } = person.exec(author)?.groups ?? {};
  if (family === undefined || given === undefined) return undefined;
  return { family, given: given.trim(), ...(role === undefined ? {} : { role }) };
}
