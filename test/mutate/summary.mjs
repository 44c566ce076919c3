/** @typedef {Readonly<Record<string, import('./mutant.ts').FileReport>>} Report */
import { inOneLine } from './mutant.ts';

/** @param {readonly import('./mutant.ts').Judged[]} mutants */
function totals(mutants) {
  /** @param {import('./mutant.ts').Status} wanted */
  const count = (wanted) => mutants.filter(({ status }) => status === wanted).length;
  const [killed, hung, survived, unreached] = [
    count('killed'),
    count('hung'),
    count('survived'),
    count('unreached'),
  ];
  const open = mutants.filter(
    ({ status, reason }) => (status === 'survived' || status === 'unreached') && reason === undefined,
  );
  const all = killed + hung + survived + unreached;
  return {
    tried: all,
    killed: killed + hung,
    endless: hung,
    survived,
    unreached,
    unexplained: open.length,
    '%': all === 0 ? 100 : Number(((100 * (killed + hung)) / all).toFixed(1)),
  };
}

/** Survivors as lines, those without a reason last. @param {Report} report */
export function survivorLines(report) {
  const all = Object.values(report)
    .flatMap(({ mutants }) => mutants)
    .filter(({ status }) => status === 'survived' || status === 'unreached')
    .map(
      ({ status, file, location, original, replacement, reason }) =>
        `${reason === undefined ? 'UNEXPLAINED ' : ''}${status} ${file}:${location.start.line + 1}: ` +
        `${inOneLine(original).slice(0, 100)}  ->  ${inOneLine(replacement).slice(0, 100)}${reason === undefined ? '' : `  (${reason})`}`,
    );
  const open = (/** @type {string} */ line) => line.startsWith('UNEXPLAINED');
  return [...all.filter((line) => !open(line)), ...all.filter(open)];
}

/**
 * Explanations that no survivor needs: a test kills the mutant by now, or there is none any more.
 * @param {Report} report @param {readonly import('./survivors.ts').Survivor[]} survivors
 */
export const idleLines = (report, survivors) =>
  survivors.flatMap(({ file, within, to, reason }) => {
    const explained = report[file]?.mutants.filter((mutant) => mutant.reason === reason);
    const needed = new Set(explained?.map(({ replacement }) => inOneLine(replacement)));
    return explained === undefined
      ? []
      : to.filter((each) => !needed.has(each)).map((each) => `NOT NEEDED ${file}: ${within}  ->  ${each}`);
  });

/** A row a file. @param {Report} report */
export const table = (report) =>
  Object.fromEntries(
    Object.entries(report).map(([file, { commit, mutants }]) => [file, { ...totals(mutants), commit }]),
  );

/** The whole in a line. @param {Report} report */
export function lastLine(report) {
  const mutants = Object.values(report).flatMap((each) => each.mutants);
  const { tried, killed, endless, survived, unreached, unexplained, '%': score } = totals(mutants);
  const constants = mutants.filter(({ status }) => status === 'constant').length;
  return (
    `mutation score ${score} % of ${tried}: killed ${killed} (endless ${endless}), survived ${survived}, reached by no test ${unreached}; ` +
    `${unexplained} of these without a reason. ${constants} constants of modules were left aside.`
  );
}
