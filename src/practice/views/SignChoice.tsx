import { useEffect, useState } from 'preact/hooks';
import { strings } from '../strings.ts';

type Choice = typeof import('../../widgets/parts/DecimalChoice.tsx').DecimalChoice;

/** The choice of a decimal sign, fetched once the page has woken: it stands last. */
export function SignChoice() {
  const [parts, setParts] = useState<{ readonly Choice: Choice }>();
  useEffect(() => {
    import('../../widgets/parts/DecimalChoice.tsx').then(
      ({ DecimalChoice }) => setParts({ Choice: DecimalChoice }),
      () => undefined, // the choice stands on other pages as well
    );
  }, []);
  return parts === undefined ? null : <parts.Choice help={strings.decimal} />;
}
