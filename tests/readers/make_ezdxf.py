"""Makes a DXF of version AC1015 with ezdxf, with one of each plain entity, and prints it: a sound file that is not ours."""
import io

import ezdxf
from ezdxf.enums import TextEntityAlignment

doc = ezdxf.new("R2000", units=1)
doc.header["$MEASUREMENT"] = 0
doc.header["$DIMSTYLE"] = "Standard"
doc.header["$EXTMIN"], doc.header["$EXTMAX"] = (0, 0, 0), (100, 80, 0)
for layout in doc.layouts:
    layout.dxf.extmin, layout.dxf.extmax = (0, 0, 0), (100, 80, 0)
for name in ("HIDDEN", "CENTER"):
    doc.linetypes.add(name, [0.3, 0.2, -0.1])
for name in ("STEEL", "HIDDEN", "CENTER", "SIZES", "NOTES", "MARKS", "FRAME"):
    doc.layers.add(name, color=7)
doc.dimstyles.get("Standard").dxf.dimtxsty = "Standard"
model = doc.modelspace()
model.add_line((1, 2), (30, 40), {"layer": "STEEL", "linetype": "HIDDEN", "lineweight": 60})
model.add_circle((50, 40), 12, {"layer": "STEEL"})
model.add_arc((50, 40), 15, 20, 200, {"layer": "CENTER"})
model.add_solid([(1, 1), (2, 1), (1, 2), (2, 2)], {"layer": "SIZES"})
model.add_lwpolyline([(5, 5, 1), (6, 5, 1)], "xyb", close=True, dxfattribs={"layer": "MARKS", "const_width": 1})
model.add_text("fitted", height=2, dxfattribs={"layer": "NOTES"}).set_placement((10, 10), (20, 10), TextEntityAlignment.FIT)
stream = io.StringIO()
doc.write(stream)
print(stream.getvalue(), end="")
