// Package workroom is the trade put together: [Draft] takes a job through
// its garment and method and trues the result; [Garments] and [Choices] list
// what there is. Everything in it is pure: the same job gives the same sheet.
package workroom
