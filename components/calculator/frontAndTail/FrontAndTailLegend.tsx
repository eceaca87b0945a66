/** Key to the drawing of front and tail: every colour also has its own shape or dash. */
export function FrontAndTailLegend() {
  return (
    <div class="legend">
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-thread" d="M4 7h22" />
          <circle class="k-pin" cx="4" cy="7" r="2.8" />
          <circle class="k-pin full" cx="26" cy="7" r="3" />
        </svg>{' '}
        midline, settled
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
          <path class="k-ref" d="M0 7h30" />
        </svg>{' '}
        anchors, tail line
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <path class="k-front" d="M0 7h30" />
        </svg>{' '}
        chosen front
      </span>
      <span>
        <svg viewBox="0 0 30 14" aria-hidden="true">
          <rect class="place-band" x="2" y="2" width="26" height="10" />
          <path class="k-pair" d="M0 2h30M0 12h30" />
        </svg>{' '}
        level for the tail tip
      </span>
    </div>
  );
}
