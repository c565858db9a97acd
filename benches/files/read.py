"""Read a workbook with pandas and openpyxl and tell the seconds and the peak memory in MB."""

import resource
import sys
import time

import openpyxl  # noqa: F401  (imported before the clock starts)
import pandas as pd

start = time.perf_counter()
frame = pd.read_excel(sys.argv[1], engine="openpyxl")
seconds = time.perf_counter() - start
assert len(frame) == 100_000
print(seconds, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024)
