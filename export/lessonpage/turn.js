
(function () {
  'use strict';
  var page = document.documentElement;
  var steps = Array.prototype.slice.call(document.querySelectorAll('section'));
  var by = function (id) { return document.getElementById(id); };
  var back = by('back'), next = by('next'), go = by('go'), whole = by('whole'), status = by('status');
  var how = document.querySelector('.how');
  var at = 0;

  function text(section, what) {
    var found = section.querySelector(what);
    return found ? found.textContent.trim() : '';
  }

  // show turns to a step. What is heard is its heading and what to do.
  function show(n, aloud) {
    at = Math.max(0, Math.min(n, steps.length - 1));
    steps.forEach(function (s, i) { s.hidden = i !== at; });
    how.hidden = at > 0;
    go.value = String(at + 1);
    back.setAttribute('aria-disabled', String(at === 0));
    next.setAttribute('aria-disabled', String(at === steps.length - 1));
    whole.setAttribute('aria-disabled', String(!steps[at].querySelector('.near')));
    if (aloud) {
      window.scrollTo(0, 0);
      status.textContent = 'Step ' + (at + 1) + ' of ' + steps.length + '. ' + text(steps[at], 'h2') + '. ' + text(steps[at], '.do');
      try { history.replaceState(null, '', '#step-' + (at + 1)); } catch (e) { /* a page kept in a mail has no place */ }
    }
  }
  function by1(d) { show(at + d, true); }

  back.addEventListener('click', function () { by1(-1); });
  next.addEventListener('click', function () { by1(1); });
  go.addEventListener('change', function () { show(Number(go.value) - 1, true); });
  whole.addEventListener('click', function () {
    var close = page.classList.toggle('close');
    whole.setAttribute('aria-pressed', String(!close));
  });

  document.addEventListener('keydown', function (e) {
    var name = e.target.nodeName;
    if (e.defaultPrevented || e.ctrlKey || e.altKey || e.metaKey || name === 'SELECT') return;
    var to = { ArrowRight: at + 1, PageDown: at + 1, ArrowLeft: at - 1, PageUp: at - 1, Home: 0, End: steps.length - 1 }[e.key];
    if (e.key === ' ' && name !== 'BUTTON') to = e.shiftKey ? at - 1 : at + 1;
    if (to === undefined) return;
    e.preventDefault();
    show(to, true);
  });

  var from = null;
  document.addEventListener('touchstart', function (e) {
    from = e.touches.length === 1 && !e.target.closest('nav') ? e.touches[0] : null;
  }, { passive: true });
  document.addEventListener('touchend', function (e) {
    if (!from) return;
    var dx = e.changedTouches[0].clientX - from.clientX, dy = e.changedTouches[0].clientY - from.clientY;
    from = null;
    if (Math.abs(dx) > 50 && Math.abs(dx) > 2 * Math.abs(dy)) by1(dx < 0 ? 1 : -1);
  }, { passive: true });
  document.addEventListener('touchcancel', function () { from = null; }, { passive: true });

  function placed() {
    var m = /^#step-(\d+)$/.exec(location.hash);
    return m ? Number(m[1]) - 1 : 0;
  }
  window.addEventListener('hashchange', function () { show(placed(), true); });

  page.classList.add('turned', 'close');
  document.querySelector('nav').hidden = false;
  show(placed(), false);
})();
