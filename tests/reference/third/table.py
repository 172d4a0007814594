"""The table of troubles: how often each comes, when it shows, how its beginning is told.

Every number here and in the two files of troubles is the author's judgement from the work,
not data: the share of a trouble among callbacks of the first years (no study holds one),
how the customer tells its beginning, and how often somebody who looks finds the sign (from
just worth a call to gross).
"""

from dataclasses import dataclass

TROUBLES = {}


@dataclass(frozen=True)
class Trouble:
    """A trouble: its share, beginning (start-up, slow, sudden; % of the told), work, times."""

    does: object
    share: float
    began: tuple
    after_work: float
    age: str
    season: str
    needs: object


def trouble(name, share, began, age="any", season="any", work=0.04, needs=None):
    """Enters a trouble into the table."""

    def enter(does):
        TROUBLES[name] = Trouble(does, share, began, work, age, season, needs or (lambda p: True))
        return does

    return enter


def several(plant):
    """More than one circuit."""
    return plant.circuits > 1


def two_pumps(plant):
    """More than one circulator."""
    return len(plant.pumps) > 1


def sealed(plant):
    """No tank, no reservoir."""
    return plant.centre == "sealed"


def tank(plant):
    """Expansion tank."""
    return plant.centre == "sealed_with_tank"


def vented(plant):
    """Vented reservoir."""
    return plant.centre == "non_pressurised"


def pressed(plant):
    """Sealed, with tank or without."""
    return plant.centre != "non_pressurised"


def mixed(plant):
    """Holds antifreeze."""
    return plant.kind != "water"
