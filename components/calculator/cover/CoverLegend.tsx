/** Key to the drawing of the cover: every colour also has its own shape or dash. */
export function CoverLegend() {
  return (
    <div class="legend">
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-front" d="M0 7h30" />
        </svg>{' '}
        planned outline, corrected
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-cover-old" d="M3 3h24v8H3zM7 11l8-8M15 11l8-8" />
        </svg>{' '}
        old work
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-cover-out" d="M3 11Q15-2 27 11z" />
        </svg>{' '}
        stays outside
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-cover-move" d="M15 2v10" />
        </svg>{' '}
        move of a mark
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <rect class="k-right" x="5" y="4" width="6" height="6" />
        </svg>{' '}
        client’s right
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <circle class="k-left" cx="9" cy="7" r="3.2" />
        </svg>{' '}
        client’s left
      </span>
    </div>
  );
}
