/** A file of sheets as the page on files shows it: small, with a decimal comma and a field left out, and one that the bench opens. */
export const fileExample = ({ mark, version }: { readonly mark: string; readonly version: number }) => ({
  file: mark,
  version,
  saved: '2026-05-09T18:30:00.000Z',
  sheets: [
    {
      title: 'Hidden transmitter',
      points: [{ readings: '7.0 dBm\n7,1 dBm' }],
      links: [{ kind: 'pad', loss: '20', amount: '0.5' }],
    },
  ],
});
