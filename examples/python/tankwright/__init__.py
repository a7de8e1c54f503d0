# SPDX-License-Identifier: BSL-1.0
"""Engineering calculations for people who build large saltwater displays by hand.

>>> import tankwright
>>> plan = tankwright.demo()                       # or tankwright.read("my_plan.toml")
>>> plan["plumbing.return[left return].below_edge"] = "35 mm +/- 5 mm"
>>> plan.assess()["sump.power_cut"].margin.to("mm")            # what is left below the rim
>>> tankwright.salt_for_new_water(volume_litres=2150, target=35, temperature_celsius=24, mix_yield="87 %").mix.to("kg")

Every formula of the library is a function here, by its name and its folder (`tankwright.water.density`), with keyword
arguments alone: a text with its unit (`volume="2150 L"`), or a number with the unit in the name (`volume_litres=2150`).
Whatever is wrong is a `tankwright.Error` that carries what it knows as attributes. **Show the caution where you show the
number.**
"""
from __future__ import annotations

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:  # what __getattr__ finds when it is asked for
    from .errors import (BadArgument, BadDocument, BadHandle, BadKey, BadPlan, BadValue, Cancelled, Error, InvalidInput,
                         Mistake, NoConvergence, OutOfRange)
    from .calculations import Formula, Result, formulas, plain
    from .library import version
    from .plan import Plan, decisions, demo, keys, new, read, read_text, starter
    from .quantity import Quantity
    from .report import Cure, Finding, Report

# The names of each module. It is loaded when one of them is asked for: importing the package costs next to nothing.
_NAMES = {
    'errors': ('BadArgument', 'BadDocument', 'BadHandle', 'BadKey', 'BadPlan', 'BadValue', 'Cancelled', 'Error',
               'InvalidInput', 'Mistake', 'NoConvergence', 'OutOfRange'),
    'calculations': ('Formula', 'Result', 'formulas', 'plain'),
    'library': ('version',),
    'plan': ('Plan', 'decisions', 'demo', 'keys', 'new', 'read', 'read_text', 'starter'),
    'quantity': ('Quantity',),
    'report': ('Cure', 'Finding', 'Report'),
}
_HOME = {name: module for module, names in _NAMES.items() for name in names}
__all__ = sorted(_HOME)


def __getattr__(name: str) -> Any:
    from importlib import import_module
    if name in _HOME:
        value = getattr(import_module(f'.{_HOME[name]}', __name__), name)
    elif name.startswith('_'):
        raise AttributeError(name)
    else:
        value = import_module('.calculations', __name__).by_attribute(name)
    globals()[name] = value
    return value


def __dir__() -> list[str]:
    from .calculations import formulas as all_formulas
    return sorted({*__all__, *(f.short_name for f in all_formulas().values()),
                   *(f.folder for f in all_formulas().values())})
