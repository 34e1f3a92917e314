// Package looks writes one sheet to choose by looking: every option of a pick
// as a small outline drafted from one client's measurements, with its name, and
// with the reason where it cannot be drafted for her. It drafts nothing: the
// options come from pattern/trial.
package looks
