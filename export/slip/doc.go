// Package slip writes the slip to take to the shop: cloth by width, and the
// small things, to tick off. On paper it is a narrow strip.
//
// It says what export/shop reckons and nothing about her body.
package slip
