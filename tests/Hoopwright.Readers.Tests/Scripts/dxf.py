"""Reads every DXF file under a folder with ezdxf and prints what it finds as JSON. Debian: python3-ezdxf."""
import json
import math
import pathlib
import sys

import ezdxf


def piece(entity):
    """A line or an arc of a polyline."""
    if entity.dxftype() == "ARC":
        sweep = (entity.dxf.end_angle - entity.dxf.start_angle) % 360
        return {"length": math.radians(sweep) * entity.dxf.radius, "radius": entity.dxf.radius, "sweepDeg": sweep}
    return {"length": (entity.dxf.end - entity.dxf.start).magnitude}


def read(path):
    document = ezdxf.readfile(path)
    audit = document.audit()
    model = document.modelspace()
    drawn = list(model)
    for dimension in model.query("DIMENSION"):
        drawn.extend(dimension.virtual_entities())
    found = {
        "version": document.dxfversion,
        "errors": [error.message for error in audit.errors],
        "fixes": [fix.message for fix in audit.fixes],
        "units": document.header["$INSUNITS"],
        "measurement": document.header["$MEASUREMENT"],
        "layers": {layer.dxf.name: [layer.dxf.lineweight, layer.dxf.linetype] for layer in document.layers},
        "kinds": sorted({entity.dxftype() for entity in model}),
        "layersUsed": sorted({entity.dxf.layer for entity in drawn}),
        "paths": [
            {"layer": entity.dxf.layer, "closed": entity.closed, "pieces": [piece(part) for part in entity.virtual_entities()]}
            for entity in model.query("LWPOLYLINE")
        ],
        "circles": [{"layer": e.dxf.layer, "radius": e.dxf.radius, "x": e.dxf.center.x, "y": e.dxf.center.y} for e in model.query("CIRCLE")],
        "lines": [{"layer": e.dxf.layer, "length": (e.dxf.end - e.dxf.start).magnitude} for e in model.query("LINE")],
        "hatches": [{"layer": e.dxf.layer, "pattern": e.dxf.pattern_name, "paths": len(e.paths)} for e in model.query("HATCH")],
        "dimensions": [
            {"text": e.dxf.text, "kind": e.dimtype, "measured": measure(e), "stated": e.dxf.actual_measurement, "block": len(list(e.virtual_entities()))}
            for e in model.query("DIMENSION")
        ],
        "texts": [{"text": e.dxf.text, "plain": e.plain_text(), "height": e.dxf.height} for e in drawn if e.dxftype() == "TEXT"],
    }
    return found


def measure(dimension):
    """What the defining points give, by ezdxf; of a running mark, the distance of its feature from its zero."""
    if dimension.dimtype == 6:
        reach = dimension.dxf.defpoint2 - dimension.dxf.defpoint
        return abs(reach.x if dimension.dxf.dimtype & 64 else reach.y)
    return dimension.get_measurement()


root = pathlib.Path(sys.argv[1])
print(json.dumps({str(path.relative_to(root)): read(path) for path in sorted(root.rglob("*.dxf"))}))
