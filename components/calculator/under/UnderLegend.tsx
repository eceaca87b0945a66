/** Key to the figure of hair and bone. */
export function UnderLegend() {
  return (
    <div class="legend">
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-mine" d="M0 7h30" />
        </svg>{' '}
        planned outline
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-ref" d="M0 7h30" />
        </svg>{' '}
        edge of the bone
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="under-full" d="M0 7h30" />
        </svg>{' '}
        under it
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="under-thin" d="M0 7h30" />
        </svg>{' '}
        thin hair
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="under-bare" d="M0 7h30" />
        </svg>{' '}
        not under it
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-study" d="M4 12l8-10M12 12l8-10M20 12l8-10" />
        </svg>{' '}
        neither
      </span>
    </div>
  );
}
