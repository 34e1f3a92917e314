// Package accept holds every writer of a drawing to the same promises: each
// role leaves a trace, the same drawing gives the same bytes, and no text,
// however hostile, breaks the file. It also has a small sheet built by hand,
// so that writers can be tested without the drafting rooms.
//
// Only tests import it.
package accept
