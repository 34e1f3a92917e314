"""Reads a DXF with ezdxf and measures it with shapely.

Called with the file and the expectations; ends with status 1 on a fault.
"""
import json, sys
import ezdxf
from shapely.geometry import LineString, Polygon


def main():
    doc = ezdxf.readfile(sys.argv[1])
    audit = doc.audit()
    faults = ['audit: ' + e.message for e in audit.errors]
    style = [e.dxf.text for e in doc.modelspace() if e.dxftype() == 'TEXT']
    scale = 25.4 if 'Units: ENGLISH' in style else 1
    blocks = {b.name: list(b) for b in doc.blocks if not b.name.startswith('*')}
    wanted = json.load(open(sys.argv[2]))
    inserts = [e.dxf.name for e in doc.modelspace() if e.dxftype() == 'INSERT']
    if sorted(inserts) != sorted(blocks) or len(blocks) != len(wanted):
        faults.append('blocks %s, inserts %s' % (sorted(blocks), inserts))
    worst = 0
    for want in wanted:
        block = blocks[want['id'].upper()[:29] + '_1']
        on = lambda layer, kind: [e for e in block if e.dxf.layer == layer and e.dxftype() == kind]
        ring = lambda e: [(v.dxf.location.x * scale, v.dxf.location.y * scale) for v in e.vertices]
        cut, sew = on('1', 'POLYLINE'), on('14', 'POLYLINE')
        if len(cut) != 1 or len(sew) != 1 or not cut[0].is_closed or sew[0].is_closed == want['on_fold']:
            faults.append('%s: outlines are not as they should be' % want['id'])
            continue
        for e, outline, copy in ((cut[0], want['cut'], '84'), (sew[0], want['stitch'], '87')):
            got, true = Polygon(ring(e)), Polygon(outline)
            # Flattened within 0.02 mm: the area is off by less than that along the line.
            if not got.is_valid or abs(got.area - true.area) > 0.025 * true.length:
                faults.append('%s: area %.2f, want %.2f' % (want['id'], got.area, true.area))
            worst = max(worst, abs(got.area - true.area) / true.area)
            a, b = got.bounds, true.bounds
            if abs((a[2] - a[0]) - (b[2] - b[0])) > 0.03 or abs((a[3] - a[1]) - (b[3] - b[1])) > 0.03:
                faults.append('%s: extents %s, want %s' % (want['id'], a, b))
            if [ring(c) for c in on(copy, 'POLYLINE')] != [ring(e)]:
                faults.append('%s: layer %s is no copy' % (want['id'], copy))
        sewn = ring(sew[0])
        length = LineString(sewn if want['on_fold'] else sewn + sewn[:1]).length
        if abs(length - want['sewn']) > 0.1:
            faults.append('%s: sewn %.3f, want %.3f' % (want['id'], length, want['sewn']))
        counts = {
            'notches': len(on('4', 'POINT')), 'holes': len(on('13', 'POINT')),
        }
        for k, n in counts.items():
            if n != want[k]:
                faults.append('%s: %d %s, want %d' % (want['id'], n, k, want[k]))
        mirror = on('6', 'LINE')
        if len(mirror) != (1 if want['on_fold'] else 0) or len(on('7', 'LINE')) != 1:
            faults.append('%s: %d mirror lines, %d grain lines' % (want['id'], len(mirror), len(on('7', 'LINE'))))
        for m in mirror:
            ends = {(round(m.dxf.start.x, 4), round(m.dxf.start.y, 4)), (round(m.dxf.end.x, 4), round(m.dxf.end.y, 4))}
            v = [(round(x / scale, 4), round(y / scale, 4)) for x, y in ring(cut[0])]
            if ends != {v[0], v[-1]}:
                faults.append('%s: the mirror line does not close the outline' % want['id'])
        if len(on('8', 'POLYLINE')) < want['darts']:
            faults.append('%s: a dart is missing' % want['id'])
    print('worst area %.5f %%' % (100 * worst))
    print('\n'.join(faults[:20]))
    sys.exit(1 if faults else 0)


main()
