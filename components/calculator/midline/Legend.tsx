/** Key to the drawing of the midline: every colour also has its own shape or dash. */
export function Legend() {
  return (
    <div class="legend">
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-thread" d="M4 7h22" />
          <circle class="k-pin" cx="4" cy="7" r="2.8" />
          <circle class="k-pin full" cx="26" cy="7" r="3" />
        </svg>{' '}
        midline
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
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-pair" d="M2 7h26M15 3v8" />
        </svg>{' '}
        pair and its middle
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-ref" d="M0 7h30" />
        </svg>{' '}
        level
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <rect class="k-out" x="5" y="4" width="6" height="6" />
          <circle class="k-out" cx="20" cy="7" r="3.2" />
        </svg>{' '}
        not trusted
      </span>
    </div>
  );
}
