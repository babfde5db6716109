"""What a power source can give, and for how long."""

from welds.errors import OutsideValidityError
from welds.language import tr


def duty_cycle_at(current_a: float, rated_current_a: float, rated_duty_percent: float) -> float:
    r"""Arc time in ten minutes at another current than the rated one.

    .. math:: X = X_r \left( \frac{I_r}{I} \right)^2 \le 100

    Parameters
    ----------
    current_a : float
        Current asked for :math:`I`, above zero and at most the rated one. [A]
    rated_current_a : float
        Current on the rating plate :math:`I_r`. [A]
    rated_duty_percent : float
        Duty cycle on the rating plate :math:`X_r`, above 0 to 100. [percent]

    Returns
    -------
    float
        Duty cycle, at most 100. [percent]

    Raises
    ------
    OutsideValidityError
        If the current is not above zero or lies above the rated one: the rule never reaches upward.

    Notes
    -----
    Equal heat in the windings; holds below the rated current only.
    Source: [AWS_GLOSSARY_DUTY] for the ten minutes; the square law is standard practice, from memory.

    Examples
    --------
    >>> round(duty_cycle_at(150.0, 200.0, 35.0))
    62
    """
    if not 0.0 < current_a <= rated_current_a:
        raise OutsideValidityError(
            "current_a", current_a, tr("above zero to {highest:g} A", highest=rated_current_a)
        )
    return min(100.0, rated_duty_percent * (rated_current_a / current_a) ** 2)
