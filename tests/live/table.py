# SPDX-License-Identifier: BSL-1.0
"""Writes a reference table in the format of tests/reference/."""
import os


class Table:
    def __init__(self, directory, name, source, kind='library'):
        self.path = os.path.join(directory, name)
        self.source = source
        self.kind = kind
        self.count = 0

    def __enter__(self):
        self.file = open(self.path + '.part', 'w')
        self.file.write('id,function,inputs,value,unit,tolerance,source,kind,note\n')
        return self

    def row(self, function, inputs, value, unit, tolerance):
        self.count += 1
        given = '; '.join(f'{k}={v if isinstance(v, str) else repr(float(v))}' for k, v in inputs.items())
        self.file.write(f'{self.count},{function},{given},{float(value)!r},{unit},{tolerance},"{self.source}",{self.kind},\n')

    def __exit__(self, kind, error, trace):
        self.file.close()
        if kind is None:
            os.replace(self.path + '.part', self.path)
            print(f'{self.path}: {self.count} rows')
