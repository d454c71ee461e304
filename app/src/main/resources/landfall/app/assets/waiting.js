// An entry of the crib is kept in this browser until the server has taken it. Without this script the form works too.
(() => {
  'use strict';
  const KEY = 'landfall waiting';
  const RETRY = 5000;
  const box = document.getElementById('waiting');
  if (!box) return;

  // A browser may forbid keeping, or have no room for it: then the form is sent as any other.
  const read = () => {
    try { return JSON.parse(localStorage.getItem(KEY) || '[]'); } catch { return []; }
  };
  const write = entries => {
    try { localStorage.setItem(KEY, JSON.stringify(entries)); return true; } catch { return false; }
  };
  const change = how => write(how(read()));
  const newTicket = () => [...crypto.getRandomValues(new Uint8Array(16))].map(b => b.toString(16).padStart(2, '0')).join('');
  const token = () => document.querySelector('input[name=token]')?.value || '';
  const words = (text, ...values) => values.reduce((all, value) => all.replace('%s', () => value), text);

  const fieldsOf = form => [...new FormData(form)].filter(([name, value]) => typeof value === 'string' && name !== 'token');
  const told = entry => {
    const fields = new Map(entry.fields);
    const own = [...fields].filter(([name, value]) => value && !['event', 'ticket', 'after', 'by', 'at'].includes(name));
    return [fields.get('event'), ...own.map(([name, value]) => name + ' ' + value)].join(' ');
  };

  // How long it has waited is told, not the hour: a phone's clock may be wrong, its seconds are not.
  const send = async entry => {
    const body = new URLSearchParams(entry.fields);
    body.set('waited', String(Math.max(0, Math.round((Date.now() - entry.typed) / 1000))));
    body.set('token', token());
    const reply = await fetch(entry.action, { method: 'POST', body, headers: { 'X-Landfall-Part': 'entry' } });
    const answer = await reply.json();
    return { status: reply.status, answer };
  };

  // Those of the same thing follow one another: what this browser wrote itself is no news to the next.
  const taken = (entry, answer) => change(all => all.filter(other => other.ticket !== entry.ticket).map(other => {
    const after = other.fields.find(([name]) => name === 'after');
    const seen = entry.fields.find(([name]) => name === 'after');
    if (other.mark === entry.mark && after && seen && after[1] === seen[1]) after[1] = String(answer.seq);
    return other;
  }));

  const refused = (entry, why) => change(all => all.map(other => (other.ticket === entry.ticket ? { ...other, why } : other)));

  // Whoever sends it again has been told what happened meanwhile.
  const again = entry => change(all => all.map(other => (other.ticket === entry.ticket
    ? { ...other, why: '', fields: other.fields.filter(([name]) => name !== 'after') } : other)));

  const button = (label, act) => {
    const made = document.createElement('button');
    made.type = 'button';
    made.textContent = label;
    made.addEventListener('click', act);
    return made;
  };

  const show = () => {
    const entries = read();
    box.hidden = entries.length === 0;
    box.replaceChildren();
    if (!entries.length) return;
    const head = document.createElement('p');
    head.append(Object.assign(document.createElement('b'), { textContent: words(box.dataset.waiting, entries.length) }));
    const list = document.createElement('ul');
    for (const entry of entries) {
      const line = document.createElement('li');
      const page = Object.assign(document.createElement('a'), { href: entry.action, textContent: entry.mark });
      line.append(page, ' ' + told(entry) + (entry.why ? '. ' + entry.why + ' ' : ''));
      if (entry.why) {
        line.append(
          button(box.dataset.again, () => { again(entry); sendAll(); }),
          button(box.dataset.drop, () => { change(all => all.filter(other => other.ticket !== entry.ticket)); show(); }));
      }
      list.append(line);
    }
    box.append(head, list);
  };

  let sending = false;
  const sendAll = async () => {
    if (sending) return;
    sending = true;
    try {
      for (const { ticket } of read()) {
        const entry = read().find(one => one.ticket === ticket);
        if (!entry || entry.why) continue;
        const { status, answer } = await send(entry);
        if (status === 200) taken(entry, answer);
        else if (status === 401) refused(entry, box.dataset.signIn);
        else if (status >= 500) break;
        else refused(entry, answer.refused.map(one => words(box.dataset.refused, one.field + ' ' + one.why, one.mend)).join(' '));
      }
    } catch { /* the server is away: it is tried again */ }
    sending = false;
    show();
  };

  document.addEventListener('submit', async e => {
    const form = e.target;
    if (!form.hasAttribute('data-entry')) return;
    const entry = { ticket: '', mark: form.dataset.entry, action: form.action, typed: Date.now(), fields: fieldsOf(form), why: '' };
    entry.ticket = entry.fields.find(([name]) => name === 'ticket')?.[1] || newTicket();
    if (!entry.fields.some(([name]) => name === 'ticket')) entry.fields.push(['ticket', entry.ticket]);
    if (!change(all => [...all, entry])) return;
    e.preventDefault();
    form.querySelectorAll('button').forEach(one => { one.disabled = true; });
    try {
      const { status, answer } = await send(entry);
      if (status < 500) {
        if (status === 200) taken(entry, answer);
        else change(all => all.filter(other => other.ticket !== entry.ticket));
        // what is refused stands in the form again with the mend, as without this script
        if (status === 200) location.assign(answer.page);
        else form.submit();
        return;
      }
    } catch { /* kept, and sent when the server is back */ }
    form.querySelectorAll('button').forEach(one => { one.disabled = false; });
    const ticket = form.querySelector('input[name=ticket]');
    if (ticket) ticket.value = newTicket();
    form.querySelectorAll('.cell input:not([name=by]):not([type=hidden]), .cell select').forEach(field => { field.value = ''; });
    show();
    box.scrollIntoView({ block: 'nearest' });
  });

  // Who had to sign in first has done so by now.
  if (token()) change(all => all.map(entry => (entry.why === box.dataset.signIn ? { ...entry, why: '' } : entry)));
  addEventListener('online', sendAll);
  addEventListener('storage', show);
  setInterval(() => { if (read().some(entry => !entry.why)) sendAll(); }, RETRY);
  show();
  sendAll();
})();
