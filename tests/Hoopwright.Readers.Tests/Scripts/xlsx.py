"""Reads every XLSX file under a folder with openpyxl and prints what it finds as JSON. Debian: python3-openpyxl."""
import json
import pathlib
import sys

import openpyxl


def kind(cell):
    if cell.value is None:
        return "empty"
    return {"n": "number", "s": "words", "f": "formula", "b": "boolean", "d": "date", "e": "error"}[cell.data_type]


def read(path):
    book = openpyxl.load_workbook(path)
    return {
        sheet.title: {
            "frozen": sheet.freeze_panes,
            "filter": sheet.auto_filter.ref,
            "repeated": sheet.print_title_rows,
            "orientation": sheet.page_setup.orientation,
            "paper": sheet.page_setup.paperSize,
            "fits": [sheet.sheet_properties.pageSetUpPr.fitToPage, sheet.page_setup.fitToWidth, sheet.page_setup.fitToHeight],
            "header": sheet.oddHeader.left.text,
            "headings": [cell.value for cell in sheet[1]],
            "bold": [cell.font.b for cell in sheet[1]],
            "rows": [[{"kind": kind(cell), "value": cell.value, "format": cell.number_format} for cell in row] for row in sheet.iter_rows(min_row=2)],
        }
        for sheet in book
    }


root = pathlib.Path(sys.argv[1])
print(json.dumps({str(path.relative_to(root)): read(path) for path in sorted(root.rglob("*.xlsx"))}, default=str))
