"""What each fault does to the true state.  inject(s, st, sev, r); sev 0..1.  Shares are one technician's judgement.

A fault is drawn by its place in the list, so the order of the families is part of a seed.
"""

from .common import F, N  # noqa: F401
from . import air  # noqa: E402, F401, I001
from . import circuits  # noqa: E402, F401, I001
from . import debris  # noqa: E402, F401, I001
from . import antifreeze  # noqa: E402, F401, I001
from . import ground  # noqa: E402, F401, I001
from . import instruments  # noqa: E402, F401, I001
from . import pressure  # noqa: E402, F401, I001
from . import pumps  # noqa: E402, F401, I001
from . import tanks  # noqa: E402, F401, I001
from . import unit  # noqa: E402, F401, I001
from . import valves  # noqa: E402, F401, I001
from . import water  # noqa: E402, F401, I001
