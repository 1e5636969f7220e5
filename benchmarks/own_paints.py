"""How well a class's own paints are known from a painted card, against numbers set beforehand.

    python benchmarks/own_paints.py MEASURE [--wheel WHEEL --cache FOLDER] [--seed N] [--cards N]

Measures: thick, washes, box, taught, doubts, marks, cards; or all.
Baseline of the same table: the nearest measured relative standing in. Everything is simulated:
see own_nature.py for what stands for nature. With --wheel the paints are fitted anew without those
that are unknown, to the measurements themselves (kept in --cache); without it the shipped ones are
used, which saw them in mixtures.
"""

from __future__ import annotations

import argparse
import os
import sys
import time
from dataclasses import replace
from pathlib import Path

os.environ.setdefault("OMP_NUM_THREADS", "1")

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1] / "tests"))
sys.path.insert(0, str(Path(__file__).parents[1]))
sys.path.insert(0, str(Path(__file__).parent))

from own_nature import DATA, HALF, INK_KEYS, KEYS, Nature, perfect, phone_by_window, without
from simulator.swatch_photos import LOADS, Stroke, drawn_shot, painted, photographed, printed

from core.colour import delta_E_2000
from core.errors import SwatchCardError
from core.paint.box.box import TWELVE_PAN, Box
from core.paint.box.own_paint import paint_of_card
from core.paint.mixture.mix import make_mix
from core.paint.own import fit as fit_module
from core.paint.own.doubts import doubts_of
from core.paint.own.fit import PaintedField
from core.paint.own.known import CAUTIOUS, FLOOR, LAMPS, YELLOW_FLOOR, _matched
from core.paint.own.layer import Lab_slopes, film_slopes
from core.paint.own.prior import prior_of
from core.paint.own.problem import Spreads
from core.paint.pigment.catalogue import CATALOGUE
from core.paint.pigment.film import film_reflectance, paper_inside
from core.paint.search.metric import local_metric
from core.scrap.model import Stroke as PuddleStroke
from core.scrap.teach import lesson_of, with_lesson
from core.swatches.asking import cards_for
from core.swatches.fitting import fit_reading
from core.swatches.marks import find_marks, grey_of
from core.swatches.read import find_card, read_card

BOXES = tuple(
    tuple(row.split())
    for row in (
        "lemon_yellow cadmium_yellow cadmium_red alizarin_crimson ultramarine prussian_blue",
        "cadmium_yellow raw_sienna cadmium_red burnt_sienna ultramarine cerulean_blue",
        "cadmium_yellow alizarin_crimson burnt_sienna sap_green ultramarine cobalt_blue",
        "lemon_yellow cadmium_yellow alizarin_crimson sap_green ultramarine ivory_black",
        "raw_sienna cadmium_red alizarin_crimson cadmium_yellow cerulean_blue ultramarine",
    )
)
RATIO_SD = 0.3
PARTNERS = ("ultramarine", "cadmium_yellow", "alizarin_crimson")
WATER = np.exp(np.linspace(-1.2, 1.2, 33))
YELLOWS = ("lemon_yellow", "cadmium_yellow", "raw_sienna")


class World:
    """Nature, and the paints that are known where some are not."""

    def __init__(self, args) -> None:
        self.args = args
        self.nature = Nature(args.wheel, args.cache, args.seed)

    def known(self, unknown):
        if self.args.wheel is None:
            return without(unknown)
        from own_refits import fit_without

        return without(unknown, *fit_without(self.args.wheel, tuple(unknown), self.args.cache))


def seeing_only(known):
    """The prior made of the known paints alone: the unknown one must not be in it."""
    fit_module.prior_of = lambda: prior_of(known)


def fit_card(fields, known, light="window"):
    """The program's own fit, with nothing known of the unknown paints."""
    seeing_only(known)
    return fit_module.fit_card(fields, known, light)


def partners_of(key, box=KEYS):
    """Ultramarine and a mid yellow; a partner's own column becomes crimson."""
    wanted = [
        k for k in ("ultramarine", "cadmium_yellow", "alizarin_crimson", "cadmium_red") if k in box
    ]
    return [partner for partner in wanted if partner != key][:2]


def stroke(world, phone, rng, key, partner, pieces):
    """Readings of a drawn-out stroke, its ends and its ratio unknown to the program."""
    if partner is None:
        half, share = HALF[key], 1.0
    else:
        ratio = np.exp(rng.normal(0, RATIO_SD))
        share = ratio / (1 + ratio)
        half = 1 / (share / HALF[key] + (1 - share) / HALF[partner])
    top, end = (24, 0.7) if partner is None else (20, 1.0)
    loads = half * np.exp(
        np.linspace(np.log(top) + rng.normal(0, 0.4), np.log(end) + rng.normal(0, 0.4), pieces)
    )
    if partner is None:
        R = [world.nature.paints((key, load)) for load in loads]
    else:
        R = [world.nature.paints((key, q * share), (partner, q * (1 - share))) for q in loads]
    Lab = phone.read(np.array(R), rng)
    return tuple(map(tuple, Lab[np.argsort(Lab[:, 0])].tolist()))


def own(key):
    return f"own_{key}"


def card(world, phone, rng, keys):
    """The fields of a card of some unknown paints."""
    fields = []
    for key in keys:
        fields.append(PaintedField(own(key), 0, "", stroke(world, phone, rng, key, None, 8)))
        pool = KEYS if len(keys) == 1 else keys
        for number, partner in enumerate(partners_of(key, pool), start=1):
            name = own(partner) if partner in keys else partner
            Lab = stroke(world, phone, rng, key, partner, 6)
            fields.append(PaintedField(own(key), number, name, Lab))
    return fields


def wash_mixes(key, partners):
    """(partner, load, load) in hundredths: 1:1, 1:3, 3:1 in half loads; 2, 6 and 18 of them."""
    return [
        (partner, total * share * HALF[key], total * (1 - share) * HALF[partner])
        for partner in partners
        for share in (0.5, 0.25, 0.75)
        for total in (2, 6, 18)
    ]


class Judged:
    """Differences at parts and at matched strength, and what was stated."""

    def __init__(self) -> None:
        self.parts, self.matched, self.stated = [], [], []

    def row(self, name) -> str:
        parts, matched = np.concatenate(self.parts), np.concatenate(self.matched)
        text = f"{name:52s} matched {two(matched)}   at parts {two(parts)}"
        if self.stated:
            stated = np.concatenate(self.stated)
            once, twice = (np.mean(matched <= n * stated) for n in (1, 2))
            text += f"   within e {once:.0%}, 2e {twice:.0%}"
        return text


def two(values) -> str:
    return f"{np.median(values):.2f}/{np.quantile(values, 0.9):.2f}"


def judge(world, known, cards, keys, judged, truths, wider=1.0):
    """Compare all wash mixes of the unknown paints with nature's."""
    rows = {key: (card.K, card.S, card.directions) for key, card in cards.items()}
    index = {key: n for n, key in enumerate((*known.keys, *rows))}
    K = np.concatenate([known.K, [row[0] for row in rows.values()]])
    S = np.concatenate([known.S, [row[1] for row in rows.values()]])

    def name(key):
        return own(key) if key in keys else key

    for key in keys:
        partners = [k for k in (INK_KEYS if len(keys) == 1 else keys) if k != key]
        mixes = wash_mixes(key, partners)
        truth = truths.get((key, tuple(partners)))
        if truth is None:
            R = np.array([world.nature.paints((key, a), (p, b)) for p, a, b in mixes])
            truth = truths.setdefault((key, tuple(partners)), DATA.spectrum_to_Lab(R))
        load = np.zeros((len(mixes), len(K)))
        for row, (partner, one, other) in zip(load, mixes, strict=True):
            row[index[name(key)]], row[index[name(partner)]] = one, other
        near = np.stack([delta_E_2000(seen(load * w, K, S, known), truth) for w in WATER])
        # Loads are no doses: at parts, one scale for all of a paint's mixes, the best median.
        judged.parts.append(near[np.argmin(np.median(near, axis=1))])
        judged.matched.append(near.min(axis=0))
        judged.stated.append(
            wider * stated(load, K, S, known, {index[k]: c for k, c in cards.items()}, key, mixes)
        )


def seen(load, K, S, known):
    """CIELAB of loads by our film."""
    return DATA.spectrum_to_Lab(film_reflectance(load, K, S, known.crowding, DATA.paper))


def stated(load, K, S, known, cards, key, mixes):
    """The stated error of each mix, as `core.paint.own.known.mix_known` gives it."""
    thin = 1 + known.crowding * load.sum(axis=1, keepdims=True)
    layer_K, layer_S = load @ K, load @ S / thin
    R, by_K, by_S = film_slopes(layer_K, layer_S, paper_inside(DATA.paper))
    Lab, by_XYZ = Lab_slopes(R @ DATA.weights)
    by_R = local_metric(Lab) @ by_XYZ @ DATA.weights.T
    crowd = known.crowding * load.sum(axis=1, keepdims=True) / thin
    by_load = np.einsum("ncb,nb->nc", by_R, by_K * layer_K + by_S * layer_S * (1 - crowd))
    squared = np.zeros(len(load))
    for row, found in cards.items():
        ways = np.array(found.directions)
        by_theta = np.concatenate(
            [
                by_R * (by_K * load[:, row, None] * K[row])[:, None],
                by_R * (by_S * load[:, row, None] / thin * S[row])[:, None],
            ],
            axis=2,
        )
        squared += (_matched(by_theta @ ways.T, by_load) ** 2).sum(axis=(1, 2))
    yellow = np.full(len(mixes), key in YELLOWS)
    return CAUTIOUS * np.sqrt(squared + np.where(yellow, YELLOW_FLOOR, FLOOR) ** 2)


def stand_in(world, keys, judged, truths, nearest):
    """The same with each unknown paint's nearest measured relative."""
    for key in keys:
        known = world.known((key,))
        like = nearest[key]
        row = known.keys.index(like)

        class Card:
            K, S, directions = known.K[row], known.S[row], np.zeros((1, 82))

        judge(world, known, {own(key): Card}, (key,), judged, truths)
    judged.stated.clear()


def nearest_relatives(world):
    """Of every paint the other whose washes, matched, come nearest."""
    found = {}
    for key in INK_KEYS:
        loads = HALF[key] * np.array([1, 4, 16])
        truth = DATA.spectrum_to_Lab(np.array([world.nature.paints((key, q)) for q in loads]))
        known = world.known((key,))
        best = {}
        for other in INK_KEYS:
            if other == key:
                continue
            row = known.keys.index(other)
            grid = HALF[other] * np.geomspace(0.1, 60, 80)
            R = film_reflectance(
                grid[:, None], known.K[row][None], known.S[row][None], known.crowding, DATA.paper
            )
            Lab = DATA.spectrum_to_Lab(R)
            best[other] = np.mean([delta_E_2000(Lab, one).min() for one in truth])
        found[key] = min(best, key=best.get)
    return found


def measure_washes(world, args):
    truths = {}
    nearest = nearest_relatives(world)
    base = Judged()
    stand_in(world, INK_KEYS, base, truths, nearest)
    print(base.row("baseline: nearest measured relative stands in"))
    for name, make, wider in (
        ("one unknown, perfect camera", lambda rng: perfect(), 1.0),
        ("one unknown, phone by a window", phone_by_window, 1.0),
        ("one unknown, phone under LED lamps", lambda rng: phone_by_window(rng, lamps=True), LAMPS),
    ):
        judged = Judged()
        for key in INK_KEYS:
            known = world.known((key,))
            for number in range(args.repeats):
                rng = np.random.default_rng([args.seed, number, KEYS.index(key)])
                phone = make(rng)
                fields = card(world, phone, rng, (key,))
                light = "scan" if phone.sensor is None else "lamps" if wider > 1 else "window"
                fitted = fit_card(fields, known, light)
                judge(world, known, fitted.cards, (key,), judged, truths, wider)
        print(judged.row(name), flush=True)


def measure_box(world, args):
    truths = {}
    for name, make in (
        ("six unknown, perfect camera", lambda rng: perfect()),
        ("six unknown, phone by a window", phone_by_window),
    ):
        judged = Judged()
        for number, keys in enumerate(BOXES):
            known = world.known(keys)
            for repeat in range(args.repeats):
                rng = np.random.default_rng([args.seed, repeat, 100 + number])
                phone = make(rng)
                fitted = fit_card(
                    card(world, phone, rng, keys),
                    known,
                    "scan" if phone.sensor is None else "window",
                )
                judge(world, known, fitted.cards, keys, judged, truths)
        print(judged.row(name), flush=True)


TAUGHT = (1, 3, 6)
"""Scraps that teach a paint, one after the other."""


def measure_taught(world, args):
    """One unknown paint from a card; then dried scraps of its mixes teach the box what it is."""
    for name, fields_read in (("its card", 3), ("one stroke alone", 1)):
        truths, refused = {}, 0
        judged = {count: Judged() for count in (0, *TAUGHT)}
        for key in INK_KEYS:
            known = world.known((key,))
            for number in range(args.repeats):
                rng = np.random.default_rng([args.seed, number, 500 + KEYS.index(key)])
                phone = phone_by_window(rng)
                fitted = fit_card(card(world, phone, rng, (key,))[:fields_read], known)
                paint = paint_of_card(key, key, fitted.cards[own(key)])
                others = [k for k in INK_KEYS if k != key]
                box = Box("ours", (paint, *(CATALOGUE[k] for k in others)))
                for count in range(max(TAUGHT) + 1):
                    if count:
                        mix, stroke_ = scrap(world, phone, rng, box, key, str(rng.choice(others)))
                        lesson = lesson_of(box, mix, [stroke_])
                        refused += lesson is None
                        box = box if lesson is None else with_lesson(box, lesson)
                    if count in judged:
                        cards = {own(key): box.paint(own(key)).card}
                        judge(world, known, cards, (key,), judged[count], truths)
        for count, found in judged.items():
            print(found.row(f"one unknown, {name} and {count} scraps"), flush=True)
        print(f"   scraps that taught nothing: {refused}")


def scrap(world, phone, rng, box, key, partner):
    """A mix of the box as planned, and a dried stroke of it as it came out."""
    parts = {own(key): int(rng.integers(1, 4)), partner: int(rng.integers(1, 4))}
    load = HALF[key] / 100 * float(np.exp(rng.uniform(np.log(2), np.log(18))))
    mix = make_mix(box, parts, load)
    total = 100 * load * np.exp(rng.normal(0, 0.35))
    off = rng.normal(0, RATIO_SD, 2)
    first, second = (n * np.exp(e) for n, e in zip(parts.values(), off, strict=True))
    share = first / (first + second)
    R = world.nature.paints((key, total * share), (partner, total * (1 - share)))
    L, a, b = phone.read(R[None], rng)[0].tolist()
    return mix, PuddleStroke((L, a, b))


def measure_thick(world, args):
    """Three flat swatches and two mixes (with white and black), known loads, measured mixtures."""
    if args.wheel is None:
        print("thick: needs --wheel, the measured mixtures")
        return
    from paint_dataset import read_dataset

    data = read_dataset(args.wheel)
    Lab = DATA.spectrum_to_Lab(data.R)
    errors = []
    for key in KEYS:
        known = world.known((key,))
        row = KEYS.index(key)
        single = np.flatnonzero(data.single & (data.load[:, row] > 0))
        single = single[np.argsort(data.load[single, row])]
        flat = single[np.rint(np.linspace(0, len(single) - 1, 3)).astype(int)]
        partners = [k for k in ("chinese_white", "ivory_black", "ultramarine") if k != key][:2]
        fields, loads = [], []
        for at in flat:
            fields.append(PaintedField(own(key), 0, "", (tuple(Lab[at]),)))
            loads.append(100 * data.load[at, row])
        mixtures = np.flatnonzero(~data.single & (data.load[:, row] > 0))
        for number, partner in enumerate(partners, start=1):
            column = KEYS.index(partner)
            have = [at for at in mixtures if data.load[at, column] > 0]
            at = min(
                have,
                key=lambda i: (
                    abs(np.log(data.load[i, row] / data.load[i, column]))
                    + abs(data.load[i].sum() - 0.06)
                ),
            )
            ratio = float(np.log(data.load[at, row] / data.load[at, column]))
            fields.append(PaintedField(own(key), number, partner, (tuple(Lab[at]),), ratio))
            loads.append(100 * data.load[at].sum())
        card_ = fit_known_loads(fields, loads, known)
        K = np.concatenate([known.K, [card_[0]]])
        S = np.concatenate([known.S, [card_[1]]])
        held = [
            at
            for at in mixtures
            if data.load[at, KEYS.index("chinese_white")] == 0 or key == "chinese_white"
        ]
        order = [*known.keys, key]
        load = 100 * data.load[held][:, [KEYS.index(k) for k in order]]
        errors.append(
            delta_E_2000(
                DATA.spectrum_to_Lab(film_reflectance(load, K, S, known.crowding, DATA.paper)),
                Lab[held],
            )
        )
    name = "3 flat swatches + 2 mixes, known loads, thick"
    print(f"{name:52s} {two(np.concatenate(errors))}   target 2.5/5.5")


def fit_known_loads(fields, loads, known):
    """The same fit with loads and ratios as stated."""
    from core.paint.own.fit import card_problem
    from core.paint.own.solve import solve

    seeing_only(known)
    problem = card_problem(fields, known, "scan", Spreads(1.0, 0.05, 0.05))
    samples = problem.samples
    for number, load in enumerate(loads):
        samples.load[number] = load
    x, _, _ = solve(problem)
    K, S = problem.spectra(x)
    return K[-1], S[-1]


def painted_card(world, rng, phone, keys=None):
    """A printed card, painted: its SwatchCard, scene and the paints' nature by own key."""
    keys = keys or [*PARTNERS, *rng.permutation([k for k in INK_KEYS if k not in PARTNERS])[:5]]
    (swatches,) = cards_for([(f"our {key.replace('_', ' ')}", key) for key in keys], TWELVE_PAN)
    nature = {row.key: row.like for row in swatches.rows}
    strokes = {}
    for number, row in enumerate(swatches.rows):
        for field in range(3):
            mix = [(row.like, 1.0)]
            if field:
                ratio = np.exp(rng.normal(0, RATIO_SD))
                other = row.partners[field - 1]
                mix = [(row.like, ratio / (1 + ratio)), (nature.get(other, other), 1 / (1 + ratio))]
            half = 1 / sum(share / HALF[key] for key, share in mix)
            R = np.array([world.nature.paints(*((k, q * s) for k, s in mix)) for q in LOADS])
            strokes[number, field] = Stroke(
                np.maximum(phone.linear(R), 0),
                half * 25 * np.exp(rng.normal(0, 0.4)),
                half * 0.6 * np.exp(rng.normal(0, 0.4)),
            )
    page = printed(swatches.code, [row.name for row in swatches.rows])
    return swatches, painted(page, strokes, rng), nature


def measure_cards(world, args):
    """Whole pictures: found, read and fitted; marks, words, washes, time."""
    for hard in (False, True):
        truths, judged, alone, alone_truths = {}, Judged(), Judged(), {}
        off, words, codes, missed, wrong, finding, whole = [], [], 0, 0, 0, [], []
        for number in range(args.cards):
            rng = np.random.default_rng([args.seed, number, 7 + hard])
            phone = phone_by_window(rng)
            swatches, scene, nature = painted_card(world, rng, phone)
            shot = drawn_shot(rng, hard)
            curve = replace(phone, exposure=shot.exposure).shown
            picture, marks = photographed(scene, shot, rng, curve)
            start = time.process_time()
            corners, code = find_card(picture)
            finding.append(time.process_time() - start)
            codes += code == swatches.code
            if corners is None:
                missed += 1
                continue
            quad = np.array(corners) * [picture.shape[1], picture.shape[0]] - 0.5
            mm = np.linalg.norm(marks[0] - marks[1]) / 168
            off.append(np.linalg.norm(quad - marks, axis=1).max() / mm)
            wrong += off[-1] > 1.0
            try:
                seeing_only(world.known(tuple(row.like for row in swatches.rows)))
                reading = read_card(picture, corners, len(swatches.rows), code)
                fit = fit_reading(swatches, reading, TWELVE_PAN, "window")
            except SwatchCardError as error:
                print("   refused:", error)
                continue
            whole.append(time.process_time() - start)
            words += [one.word for one in fit.reading.fields]
            keys = tuple(row.like for row in swatches.rows)
            cards = {own(nature[paint.key]): paint.card for paint in fit.paints}
            read = tuple(key for key in keys if own(key) in cards)
            judge(world, DATA, cards, read, judged, truths)
            fit_alone(world, fit, nature, alone, alone_truths)
        name = "hard pictures" if hard else "usual pictures"
        print(judged.row(f"{name}, eight unknown, found, read, fitted"))
        print(alone.row(f"{name}, each paint the only unknown one"))
        others = {word: words.count(word) for word in sorted(set(words)) if word != "read"}
        print(
            f"   {args.cards} {name}: not found {missed}, wrong {wrong}, worst mark mm median "
            f"{np.median(off):.2f} p90 {np.quantile(off, 0.9):.2f}, codes {codes}; of {len(words)} "
            f"fields not read: {others}; processor seconds: found {np.median(finding):.2f}, "
            f"card to box {np.median(whole):.2f}, at most {max(whole):.2f}",
            flush=True,
        )


def fit_alone(world, fit, nature, judged, truths):
    """Each row of a card that was read, as if all paints but its own were known."""
    for paint in fit.paints:
        key = nature[paint.key]
        fields: dict[int, list] = {}
        partners = {}
        for reading in paint.card.readings:
            fields.setdefault(reading.field, []).append(reading.Lab)
            partners[reading.field] = nature.get(reading.partner, reading.partner)
        known = world.known((key,))
        painted_fields = [
            PaintedField(own(key), field, partners[field], tuple(Lab))
            for field, Lab in sorted(fields.items())
        ]
        judge(world, known, fit_card(painted_fields, known).cards, (key,), judged, truths)


def measure_marks(world, args):
    """Only the finding, on one painted card."""
    rng = np.random.default_rng(args.seed)
    _, scene, _ = painted_card(world, rng, perfect())
    for hard in (False, True):
        off, took = [], []
        for number in range(5 * args.cards):
            rng = np.random.default_rng([args.seed, number, 50 + hard])
            picture, marks = photographed(
                scene, drawn_shot(rng, hard), rng, phone_by_window(rng).shown
            )
            grey = grey_of(picture)
            start = time.process_time()
            quad = find_marks(grey)
            took.append(time.process_time() - start)
            mm = np.linalg.norm(marks[0] - marks[1]) / 168
            off.append(99.0 if quad is None else np.linalg.norm(quad - marks, axis=1).max() / mm)
        off = np.array(off)
        name = "hard" if hard else "usual"
        print(
            f"marks, {len(off)} {name} pictures: found {np.mean(off < 1):.1%}, wrong "
            f"{np.mean((off >= 1) & (off < 99)):.1%}, mm median {np.median(off):.2f} p90 "
            f"{np.quantile(off, 0.9):.2f}; {1000 * np.median(took):.0f} ms, at most "
            f"{1000 * max(took):.0f}",
            flush=True,
        )


def measure_doubts(world, args):
    """One unknown paint a card: right, mixes swapped, a wrong partner, a wrong paint alone."""
    found = {"right": [], "swapped": [], "wrong partner": [], "wrong paint": []}
    for key in INK_KEYS:
        known = world.known((key,))
        for number in range(args.repeats):
            rng = np.random.default_rng([args.seed, number, 300 + KEYS.index(key)])
            phone = phone_by_window(rng)
            fields = card(world, phone, rng, (key,))
            one, two = partners_of(key)
            others = [k for k in INK_KEYS if k not in (key, one, two)]
            other = str(rng.choice(others))
            first, second, third = fields
            wrong = stroke(world, phone, rng, key, other, 6)
            alone = stroke(world, phone, rng, other, None, 8)
            cases = {
                "right": fields,
                "swapped": [
                    first,
                    replace(second, Lab=third.Lab),
                    replace(third, Lab=second.Lab),
                ],
                "wrong partner": [first, second, replace(third, Lab=wrong)],
                "wrong paint": [replace(first, Lab=alone), second, third],
            }
            for name, painted_fields in cases.items():
                fitted = fit_card(painted_fields, known)
                found[name].append(bool(doubts_of(fitted, known)))
    targets = {"right": "at most 5%", "swapped": "100%", "wrong partner": "70%"}
    for name, told in found.items():
        print(
            f"{name:52s} asked about {np.mean(told):.0%} of {len(told)}   target "
            f"{targets.get(name, '-')}",
            flush=True,
        )


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("measure", choices=(*MEASURES, "all"))
    parser.add_argument("--wheel", type=Path)
    parser.add_argument("--cache", type=Path)
    parser.add_argument("--seed", type=int, default=5000)
    parser.add_argument("--repeats", type=int, default=2)
    parser.add_argument("--cards", type=int, default=12)
    args = parser.parse_args()
    world = World(args)
    for name, measure in MEASURES.items():
        if args.measure in (name, "all"):
            measure(world, args)


MEASURES = {
    "thick": measure_thick,
    "washes": measure_washes,
    "box": measure_box,
    "taught": measure_taught,
    "doubts": measure_doubts,
    "marks": measure_marks,
    "cards": measure_cards,
}


if __name__ == "__main__":
    main()
