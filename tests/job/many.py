"""A job too large to weld: three hundred joints that all differ, each after the one before."""

KINDS = ("butt", "tee", "lap", "outside-corner")


def three_hundred_joints() -> str:
    """Return the section of a job file."""
    lines = ["joints:"]
    for n in range(300):
        after = f", after: [j{n - 1}]" if n else ""
        sheet = f"thickness: {0.9 + 0.013 * n:.3f} mm, length: {50 + n}"
        lines.append(f"  - {{id: j{n}, joint: {KINDS[n % 4]}, {sheet}{after}}}")
    return "\n".join(lines)
