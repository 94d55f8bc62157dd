"""Reads a workbook by openpyxl, or a file of separated values by Python's csv module, and prints it as JSON.

table-read.py FILE.xlsx          {"title", "sheets": [{"name", "frozen", "rows": [[cell]]}]}
table-read.py FILE.csv SEPARATOR {"rows": [[text]]}

A cell is null, or [type, value, format]: type s for text, n for a number, as openpyxl tells it from the file.
"""

import csv
import json
import sys


def workbook(path):
    import openpyxl

    book = openpyxl.load_workbook(path)
    sheets = []
    for sheet in book.worksheets:
        rows = [
            [None if cell.value is None else [cell.data_type, cell.value, cell.number_format] for cell in row]
            for row in sheet.iter_rows()
        ]
        sheets.append({"name": sheet.title, "frozen": sheet.freeze_panes, "rows": rows})
    return {"title": book.properties.title, "sheets": sheets}


def separated(path, separator):
    # newline='' as the module asks: line ends belong to the format.
    with open(path, newline="", encoding="utf-8") as file:
        return {"rows": list(csv.reader(file, delimiter=separator, strict=True))}


path = sys.argv[1]
told = workbook(path) if path.endswith(".xlsx") else separated(path, sys.argv[2])
json.dump(told, sys.stdout, ensure_ascii=True)
