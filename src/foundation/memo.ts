// What is worked out once and kept: tables and indexes on first use, answers of pure functions up to a number. Answers under
// facts of the caller's own are kept apart, for as long as those facts are there.
import { type Facts, factsInForce, under } from "./facts";

const NOT_YET: unique symbol = /* @__PURE__ */ Symbol("not yet");

/** What `make` gives, made on first use and kept. Nothing is built at import, and a table that nobody asks is never made. */
export function once<T>(make: () => T): () => T {
  const facts = factsInForce();
  let made: T | typeof NOT_YET = NOT_YET;
  return () => {
    if (made === NOT_YET) made = under(facts, make);
    return made;
  };
}

/** Keeps an answer, the oldest forgotten beyond `most`. */
function kept<T>(answers: Map<string, T>, most: number, key: string, answer: T): T {
  if (answers.size >= most) answers.delete(answers.keys().next().value!);
  answers.set(key, answer);
  return answer;
}

/** The answers that are kept for the facts in force. */
function answersByFacts<T>(): () => Map<string, T> {
  const usual = new Map<string, T>();
  let own: WeakMap<Facts, Map<string, T>> | undefined;
  return () => {
    const facts = factsInForce();
    if (facts === undefined) return usual;
    own ??= new WeakMap();
    let answers = own.get(facts);
    if (answers === undefined) {
      answers = new Map();
      own.set(facts, answers);
    }
    return answers;
  };
}

/** Answers by key, up to a number: tables do not change, and the same is asked again and again. */
export function remembering<T>(most: number): (key: string, compute: () => T) => T {
  const answersNow = answersByFacts<T>();
  return (key, compute) => {
    const answers = answersNow();
    const known = answers.get(key);
    return known !== undefined || answers.has(key) ? (known as T) : kept(answers, most, key, compute());
  };
}

/** A function of one text, with up to `most` of its answers remembered; makes nothing where an answer is known. */
export function memoised<T>(most: number, answer: (text: string) => T): (text: string) => T {
  const answersNow = answersByFacts<T>();
  return (text) => {
    const answers = answersNow();
    const known = answers.get(text);
    return known !== undefined || answers.has(text) ? (known as T) : kept(answers, most, text, answer(text));
  };
}

/** A function of one object, with its answer kept for as long as the object is there. */
export function keptBeside<K extends object, T>(answer: (one: K) => T): (one: K) => T {
  const answers = new WeakMap<K, T>();
  return (one) => {
    const known = answers.get(one);
    if (known !== undefined || answers.has(one)) return known as T;
    const made = answer(one);
    answers.set(one, made);
    return made;
  };
}
