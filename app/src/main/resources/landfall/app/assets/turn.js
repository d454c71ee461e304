// One turn of the tap in its fixture: shows what the page holds for every moment, and tells the body in space.
const holder = document.getElementById('one-turn');

const start = () => {
  const numbers = text => text.split(' ').map(Number);
  const spindle = numbers(holder.dataset.spindle);
  const axial = numbers(holder.dataset.axial);
  const radial = numbers(holder.dataset.radial);
  const where = holder.dataset.where.split('|');
  const dials = [...holder.querySelectorAll('.running')].map(figure => ({
    needle: figure.querySelector('[data-part=needle]'),
    turns: figure.querySelector('[data-part=turns]'),
    degrees: figure.dataset.needle.split(' '),
    words: figure.dataset.words.split('|'),
    output: figure.querySelector('output'),
  }));
  const say = holder.querySelector('[data-say]');
  const play = holder.querySelector('[data-run=play]');
  const last = spindle.length - 1;
  const turnTo = (part, degrees) => part.setAttribute('transform', `rotate(${degrees} ${part.dataset.pivot})`);
  let at = 0, running = false;

  const show = moment => {
    at = (moment + last) % last;
    for (const dial of dials) {
      const lifted = dial.degrees[at] === 'x';
      dial.needle.style.display = dial.turns.style.display = lifted ? 'none' : '';
      if (!lifted) {
        turnTo(dial.needle, dial.degrees[at]);
        turnTo(dial.turns, dial.degrees[at] / 10);
      }
      dial.output.textContent = dial.words[at];
    }
    say.textContent = where[at];
    holder.dataset.moment = String(at);
    document.dispatchEvent(new CustomEvent('spindle', { detail: { degrees: spindle[at], axial: axial[at], radial: radial[at] } }));
  };

  const stop = () => {
    running = false;
    play.setAttribute('aria-pressed', 'false');
    say.setAttribute('role', 'status');
  };
  const run = () => {
    running = true;
    play.setAttribute('aria-pressed', 'true');
    // fifteen texts a second are no status to read out
    say.removeAttribute('role');
    const began = performance.now(), from = at;
    const step = now => {
      if (!running) return;
      const gone = Math.floor((now - began) / 80);
      show(from + Math.min(gone, last));
      if (gone < last) requestAnimationFrame(step);
      else stop();
    };
    requestAnimationFrame(step);
  };
  const edges = numbers(holder.dataset.edges);
  const edge = () => edges.find(moment => moment > at) ?? 0;
  // who asked for less motion steps through the turn, and nothing runs by itself
  play.hidden = matchMedia('(prefers-reduced-motion: reduce)').matches;
  play.addEventListener('click', () => (running ? stop() : run()));
  const deeds = { back: () => at - 1, on: () => at + 1, next: edge };
  for (const [name, deed] of Object.entries(deeds)) {
    holder.querySelector(`[data-run=${name}]`).addEventListener('click', () => { stop(); show(deed()); });
  }
  holder.hidden = false;
  show(0);
};
if (holder) start();
