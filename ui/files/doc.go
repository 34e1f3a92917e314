// Package files puts bytes on disk so that nothing is ever half written.
//
// A file is written beside its place under another name, brought safely to the
// disk and then renamed: whatever happens, the old or the new file is there,
// whole. A Stamp remembers what was read, so that a change made elsewhere is
// noticed before it is written over. Output that would replace a differing
// file is refused unless forced. Folders finds where settings, rescue copies
// and caches belong.
//
// The package never looks at what the bytes mean, never asks anybody and
// never locks. Every trouble is a Trouble: path, what is wrong, what would
// work, in one plain sentence around the system's own.
package files
