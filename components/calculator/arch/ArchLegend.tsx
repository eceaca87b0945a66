/** Key to the lines of the arch rules: dash and weight say what the colour says. */
export function ArchLegend() {
  return (
    <div class="legend">
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-study" d="M0 7h30" />
        </svg>{' '}
        published rule
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-habit" d="M0 7h30" />
        </svg>{' '}
        habit or own share
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-mine" d="M0 7h30" />
        </svg>{' '}
        your rule
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-ref" d="M0 7h30" />
        </svg>{' '}
        settled front and tail
      </span>
    </div>
  );
}
