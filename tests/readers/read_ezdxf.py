"""Reads every DXF of a folder with ezdxf and prints what it found as JSON: {file: {...}}.

Texts are as they stand in the file. Dimensions are measured by ezdxf from their definition points.
"""
import json
import sys
from pathlib import Path

import ezdxf


def xy(*points):
    return [value for point in points for value in (point[0], point[1])]


def figures(entity):
    dxf = entity.dxf
    kind = entity.dxftype()
    if kind == "LINE":
        return xy(dxf.start, dxf.end)
    if kind == "CIRCLE":
        return xy(dxf.center) + [dxf.radius]
    if kind == "ARC":
        return xy(dxf.center) + [dxf.radius, dxf.start_angle, dxf.end_angle]
    if kind == "SOLID":
        return xy(dxf.vtx0, dxf.vtx1, dxf.vtx2, dxf.vtx3)
    if kind == "LWPOLYLINE":
        return [value for point in entity.get_points("xyb") for value in point] + [dxf.const_width]
    if kind == "TEXT":
        return xy(dxf.insert, dxf.align_point) + [dxf.height]
    return []


def entity(item, doc):
    layer = doc.layers.get(item.dxf.layer)
    linetype = item.dxf.get("linetype", "BYLAYER")
    weight = item.dxf.get("lineweight", -1)
    return {
        "type": item.dxftype(),
        "layer": item.dxf.layer,
        "figures": figures(item),
        "text": item.dxf.get("text", None) if item.dxftype() == "TEXT" else None,
        "linetype": layer.dxf.linetype if linetype.upper() == "BYLAYER" else linetype,
        "weight": layer.dxf.lineweight if weight < 0 else weight,
    }


def dimension(item, doc):
    style = doc.dimstyles.get(item.dxf.dimstyle)
    return {
        "kind": item.dimtype,
        "measured": item.get_measurement(),
        "factor": style.dxf.dimlfac,
        "text": item.dxf.text,
        "block": [entity(part, doc) for part in doc.blocks.get(item.dxf.geometry)],
    }


def read(path):
    doc = ezdxf.readfile(path)
    audit = doc.audit()
    model = doc.modelspace()
    return {
        "errors": [error.message for error in audit.errors],
        "fixes": [fix.message for fix in audit.fixes],
        "version": doc.dxfversion,
        "units": doc.header["$INSUNITS"],
        "layouts": doc.layout_names(),
        "entities": [entity(item, doc) for item in model if item.dxftype() != "DIMENSION"],
        "dimensions": [dimension(item, doc) for item in model.query("DIMENSION")],
    }


folder = Path(sys.argv[1])
print(json.dumps({path.name: read(path) for path in sorted(folder.glob("*.dxf"))}))
