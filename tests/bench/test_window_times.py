"""How soon the window is there. Goals: painted in 1.3 times an empty window's time, ready within 1 s warm.

Each round starts one empty window and one of ours, so that a slow moment of the machine meets both. A
person's second start finds byte code where the first left it, so it is kept here too. Nothing here fails
by time.
"""

from statistics import median

from tests.support.opening import Opening, open_window

ROUNDS = 9
FLOOR = "an empty window painted"


def test_window_against_an_empty_one(benchmark, capsys, tmp_path):
    warm = {"PYTHONDONTWRITEBYTECODE": "", "PYTHONPYCACHEPREFIX": str(tmp_path)}
    rounds: list[tuple[Opening, Opening]] = []

    def open_both() -> None:
        rounds.append((open_window("empty", **warm), open_window(**warm)))

    benchmark.pedantic(open_both, rounds=ROUNDS if benchmark.enabled else 1, warmup_rounds=benchmark.enabled)
    empty_s = median(empty.painted_s for empty, _ours in rounds)
    painted_s = median(ours.painted_s for _empty, ours in rounds)
    ready_s = median(ours.ready_s for _empty, ours in rounds)
    least_s = min(ours.ready_s for _empty, ours in rounds)
    busy_s = median(ours.ready_cpu_s for _empty, ours in rounds)
    benchmark.extra_info["rows"] = [
        ("window painted", painted_s, FLOOR, empty_s),
        ("window ready, with a card", ready_s, FLOOR, empty_s),
    ]
    with capsys.disabled():
        print(
            f"\nempty window painted {1000 * empty_s:.0f} ms, ours {1000 * painted_s:.0f} ms "
            f"({painted_s / empty_s:.2f} times), ready {1000 * ready_s:.0f} ms, median of {len(rounds)}"
            f" (least {1000 * least_s:.0f} ms, processor time {1000 * busy_s:.0f} ms)"
        )
    assert 0.0 < painted_s <= ready_s
