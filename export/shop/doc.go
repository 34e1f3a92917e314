// Package shop says what a draft asks of the shop: how much of each cloth by
// the hand rule, and the small things. The guide and the slip say it both.
//
// It reckons by pattern/lay and reads lengths off the sheet; it writes
// nothing.
package shop
