// Live answers while typing. Without this script the same form works with its button.
(() => {
  'use strict';
  const root = document.documentElement;
  root.classList.add('js');

  const addressOf = form => {
    const given = new URLSearchParams();
    for (const [name, value] of new FormData(form)) {
      if (typeof value === 'string' && value.trim() !== '') given.append(name, value);
    }
    const query = given.toString();
    return form.getAttribute('action') + (query ? '?' + query : '');
  };

  // An address carries what was typed; what is too long for one is sent as a form and has no address.
  const LONGEST = 24000;
  const askedOf = (form, address, signal) => {
    const headers = { 'X-Landfall-Part': 'answer' };
    if (address.length <= LONGEST) return fetch(address, { headers, signal });
    const body = new URLSearchParams([...new FormData(form)].filter(([, value]) => typeof value === 'string'));
    return fetch(form.getAttribute('action'), { method: 'POST', body, headers, signal });
  };

  const figuresIn = part => {
    const figures = new Map();
    part.querySelectorAll('[data-figure]').forEach(f => figures.set(f.dataset.figure, f.textContent));
    return figures;
  };

  const openIn = part => new Set([...part.querySelectorAll('details[open][id]')].map(d => d.id));
  const tickedIn = part => new Set([...part.querySelectorAll('input[type=checkbox]:checked[id]')].map(t => t.id));

  const showFindings = (form, part) => {
    const wrong = new Map();
    part.querySelectorAll('[data-finding]').forEach(f => wrong.set(f.dataset.finding, f.textContent.trim()));
    form.querySelectorAll('.cell').forEach(cell => {
      const field = cell.querySelector('input, select, textarea');
      const says = cell.querySelector('.finding');
      const found = wrong.get(field.name);
      field.setAttribute('aria-invalid', found ? 'true' : 'false');
      says.textContent = found || '';
    });
  };

  const put = (answer, html) => {
    const before = figuresIn(answer);
    const open = openIn(answer);
    const ticked = tickedIn(answer);
    const focused = answer.contains(document.activeElement) ? document.activeElement.id : '';
    answer.innerHTML = html;
    answer.querySelectorAll('template[data-for]').forEach(part => {
      document.getElementById(part.dataset.for)?.replaceChildren(part.content);
      part.remove();
    });
    open.forEach(id => document.getElementById(id)?.setAttribute('open', ''));
    ticked.forEach(id => { const box = document.getElementById(id); if (box) box.checked = true; });
    if (focused) document.getElementById(focused)?.focus();
    answer.querySelectorAll('[data-figure]').forEach(f => {
      if (before.size && before.get(f.dataset.figure) !== f.textContent) {
        f.classList.add('changed');
        setTimeout(() => f.classList.remove('changed'), 1500);
      }
    });
  };

  const live = form => {
    const answer = document.getElementById(form.dataset.live);
    const status = document.getElementById('status');
    let timer = 0;
    let asked = null;
    let last = addressOf(form);
    // The first change after a field was left makes an entry in the history; more typing in it replaces that entry.
    let left = true;
    const ask = async (remembered = true) => {
      const address = addressOf(form);
      if (address === last) return;
      last = address;
      asked?.abort();
      asked = new AbortController();
      try {
        const reply = await askedOf(form, address, asked.signal);
        put(answer, await reply.text());
        status.classList.add('out-of-sight');
        showFindings(form, answer);
        if (remembered && address.length <= LONGEST) history[left ? 'pushState' : 'replaceState'](null, '', address);
        left = false;
        document.querySelectorAll('[data-follows]').forEach(a => { a.href = a.dataset.follows + new URL(address, location).search; a.hidden = address.length > LONGEST; });
        status.textContent = answer.querySelector('[data-status]')?.dataset.status || '';
      } catch (trouble) {
        if (trouble.name === 'AbortError') return;
        status.textContent = form.dataset.lost;
        status.classList.remove('out-of-sight');
      }
    };
    const now = async () => {
      clearTimeout(timer);
      await ask();
      left = true;
    };
    form.addEventListener('input', e => {
      clearTimeout(timer);
      // A line that is half typed is not a wrong one yet.
      timer = setTimeout(() => ask(), e.target.matches('textarea') ? 900 : 150);
    });
    form.addEventListener('change', now);
    form.addEventListener('submit', e => {
      if (e.submitter?.hasAttribute('formaction')) return;
      e.preventDefault();
      now();
    });
    addEventListener('popstate', async () => {
      const given = new URLSearchParams(location.search);
      form.querySelectorAll('.cell input, .cell select, .cell textarea').forEach(field => { field.value = given.get(field.name) || ''; });
      clearTimeout(timer);
      await ask(false);
      left = true;
    });
  };

  document.querySelectorAll('form[data-live]').forEach(live);

  // How far a long run is; when it stands still, the page is loaded with what it found.
  document.querySelectorAll('[data-events]').forEach(far => {
    const events = new EventSource(far.dataset.events);
    events.addEventListener('far', e => { far.textContent = e.data; });
    events.addEventListener('still', e => { far.textContent = e.data; events.close(); location.reload(); });
  });

  const write = (field, text) => {
    field.value = text;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    field.dispatchEvent(new Event('change', { bubbles: true }));
  };
  // A card is opened together with what is typed by now; a text goes straight into its field.
  document.querySelectorAll('input[type=file][data-send]').forEach(f => f.addEventListener('change', async () => {
    const into = document.getElementById(f.dataset.into);
    if (!into) return f.form.requestSubmit(document.getElementById(f.dataset.send));
    const [file] = f.files;
    if (file) write(into, (await file.text()).trim());
    f.value = '';
  }));
  // A browser may forbid keeping, or have no room for it; then there is nothing to bring back.
  const kept = key => { try { return localStorage.getItem(key) || ''; } catch { return ''; } };
  const keep = (key, text) => { try { localStorage.setItem(key, text); } catch { /* not kept */ } };
  // Long texts are kept on this machine while they are typed, so that a closed page loses none.
  document.querySelectorAll('[data-brings]').forEach(button => {
    const field = document.getElementById(button.dataset.brings);
    const key = 'landfall ' + location.pathname + ' ' + field.name;
    const shows = () => { button.parentElement.hidden = field.value.trim() !== '' || !kept(key); };
    field.addEventListener('input', () => {
      if (field.value.trim() !== '') keep(key, field.value);
      shows();
    });
    button.addEventListener('click', () => { write(field, kept(key)); field.focus(); });
    shows();
  });
  // Holes are typed cell after cell: figures bring up the keypad, and the enter key goes on to the next cell.
  document.querySelectorAll('form.holes').forEach(form => {
    const cells = () => [...form.querySelectorAll('fieldset input, fieldset select')];
    cells().forEach(cell => {
      if (/\.count$/.test(cell.name)) cell.inputMode = 'numeric';
      if (/\.depth$/.test(cell.name)) cell.inputMode = 'decimal';
      cell.enterKeyHint = 'next';
    });
    form.addEventListener('keydown', e => {
      const all = cells();
      const at = all.indexOf(e.target);
      if (e.key !== 'Enter' || at < 0) return;
      e.preventDefault();
      (all[at + 1] || form.querySelector('button.first')).focus();
    });
  });

  document.addEventListener('click', e => {
    if (e.target.closest('[data-print]')) print();
    const goes = e.target.closest('[data-goes]');
    const field = goes && document.getElementById(goes.hash.slice(1));
    if (field) {
      e.preventDefault();
      field.closest('details')?.setAttribute('open', '');
      field.scrollIntoView({ block: 'center' });
      field.focus();
    }
  });
})();
