"""Reads CSV, ICS, GeoJSON and zip files under a folder with readers of others and prints what they find as JSON.

Debian: python3-icalendar, python3-geographiclib; csv, json and zipfile are Python's own."""
import csv
import json
import pathlib
import sys
import zipfile

import icalendar
from geographiclib.geodesic import Geodesic


def table(path):
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.reader(file, strict=True))


def calendar(path):
    found = icalendar.Calendar.from_ical(path.read_bytes())
    return {
        "version": str(found["VERSION"]),
        "product": str(found["PRODID"]),
        "errors": [str(error) for part in found.walk() for error in part.errors],
        "events": [
            {
                "uid": str(event["UID"]),
                "start": event["DTSTART"].dt.isoformat(),
                "end": event["DTEND"].dt.isoformat() if "DTEND" in event else None,
                "summary": str(event["SUMMARY"]),
                "description": str(event.get("DESCRIPTION", "")),
                "rule": event["RRULE"].to_ical().decode() if "RRULE" in event else None,
            }
            for event in found.walk("VEVENT")
        ],
        "longestLine": max(len(line) for line in path.read_bytes().split(b"\r\n")),
    }


def place(path):
    found = json.loads(path.read_text(encoding="utf-8"))
    ring = next(f for f in found["features"] if f["properties"]["kind"] == "footprint")["geometry"]["coordinates"][0]
    area = Geodesic.WGS84.Polygon()
    for longitude, latitude in ring[:-1]:
        area.AddPoint(latitude, longitude)
    sides = [Geodesic.WGS84.Inverse(a[1], a[0], b[1], b[0]) for a, b in zip(ring, ring[1:])]
    names = {f["properties"]["name"]: f["geometry"]["coordinates"] for f in found["features"] if f["properties"]["kind"] == "stake"}
    origin = names["left front corner"]
    return {
        "type": found["type"],
        "members": sorted(found),
        "closed": ring[0] == ring[-1],
        # Of a ring that runs anticlockwise the area is positive.
        "area": area.Compute(False, True)[2],
        "sides": [side["s12"] for side in sides],
        "azimuths": [side["azi1"] for side in sides],
        "fromOrigin": {name: Geodesic.WGS84.Inverse(origin[1], origin[0], at[1], at[0])["s12"] for name, at in names.items()},
        "middle": [sum(c[0] for c in ring[:-1]) / 4, sum(c[1] for c in ring[:-1]) / 4],
        "name": next(f for f in found["features"] if f["properties"]["kind"] == "footprint")["properties"]["name"],
    }


def packed(path):
    with zipfile.ZipFile(path) as archive:
        return {
            "bad": archive.testzip(),
            "files": {info.filename: info.file_size for info in archive.infolist()},
            "times": sorted({str(info.date_time) for info in archive.infolist()}),
        }


readers = {".csv": table, ".ics": calendar, ".geojson": place, ".zip": packed}
root = pathlib.Path(sys.argv[1])
print(json.dumps({str(path.relative_to(root)): readers[path.suffix](path) for path in sorted(root.rglob("*")) if path.suffix in readers}))
