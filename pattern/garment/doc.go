// Package garment says which pieces a garment has and which steps draw them,
// in which order: one file a garment and method. It holds no numbers: they
// are rules; and no curves: they are details.
package garment
