/** What was wrong with the address that a widget was opened by; nothing where nothing was. */
export function AddressProblems({ problems }: { problems: readonly string[] }) {
  if (problems.length === 0) return null;
  return (
    <div class="caution" role="status">
      {problems.map((problem) => (
        <p key={problem}>{problem}</p>
      ))}
    </div>
  );
}
