"""Reads every DXF of a folder with OGR and prints what it found as JSON: {file: [{layer, kind, text, coordinates}]}.

OGR puts the content of a dimension's block in the dimension's place. It bends arcs into short chords.
"""
import json
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path


def feature(item):
    kept = item["properties"]
    return {
        "layer": kept["Layer"],
        "kind": kept["SubClasses"].split(":")[-1],
        "text": kept.get("Text"),
        "shape": item["geometry"]["type"],
        "coordinates": item["geometry"]["coordinates"],
    }


def read(path):
    done = subprocess.run(
        ["ogr2ogr", "-f", "GeoJSON", "-lco", "COORDINATE_PRECISION=9", "/vsistdout/", str(path)],
        check=True, capture_output=True, text=True,
    )
    if done.stderr.strip():
        raise SystemExit(f"{path.name}: {done.stderr}")
    return [feature(item) for item in json.loads(done.stdout)["features"]]


paths = sorted(Path(sys.argv[1]).glob("*.dxf"))
with ThreadPoolExecutor() as pool:
    print(json.dumps(dict(zip((path.name for path in paths), pool.map(read, paths)))))
