import { strings } from '../strings.ts';

/** What could not be read of the address that was opened, and whether the present sheet still fits into one. */
export function AddressPart({ problems, tooLong }: { problems: readonly string[]; tooLong: boolean }) {
  if (problems.length === 0 && !tooLong) return null;
  return (
    <div class="caution address-told" role="status">
      {problems.length > 0 && (
        <>
          <p>
            <strong>{strings.address.told}</strong>
          </p>
          <ul>
            {problems.map((problem) => (
              <li key={problem}>{problem}</li>
            ))}
          </ul>
        </>
      )}
      {tooLong && <p>{strings.address.tooLong}</p>}
    </div>
  );
}
