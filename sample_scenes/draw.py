"""Draw the sample scenes anew and write down their truth: python -m sample_scenes.draw

Every scene starts from the colours and lines it is to have; clouds, glow and grain come over
them, and the rows are then settled so that each band's middle colour is the one given.
scenes.json keeps those colours, the lines and the skyline.
"""

from __future__ import annotations

import argparse
import json
from pathlib import Path

import numpy as np
from PIL import Image

from sample_scenes.drawing.land import Silhouette
from sample_scenes.drawing.noise import Field
from sample_scenes.drawing.scenes import SCENES, Scene
from sample_scenes.drawing.sky import add_cloud, add_glow, bands_sky, settle

HERE = Path(__file__).parent
SKYLINE_STEPS = 200
GRAIN = 0.9  # standard deviation of the grain, in Lab units


def draw(scene: Scene) -> tuple[Field, Field]:
    """The picture (sRGB 0..1) and how much of each pixel is not sky (0..1)."""
    columns, rows = scene.size
    shape = (rows, columns)
    edges = (0.0, *scene.lines, scene.horizon)
    colours = np.array(scene.bands, dtype=float)
    # The land is drawn once over nothing, to learn which sky stays in sight.
    land = scene.land(np.zeros((*shape, 3)), Silhouette(shape), np.random.default_rng(scene.seed))
    rng = np.random.default_rng(scene.seed + 1)
    sky = bands_sky(shape, edges, colours, rng, crisp=scene.crisp, wander=scene.wander)
    for glow in scene.glows:
        add_glow(sky, glow.centre, glow.size, glow.Lab)
    for cloud in scene.clouds:
        add_cloud(sky, cloud, rng)
    sky += GRAIN * rng.standard_normal(sky.shape) * np.array([1.0, 0.5, 0.5])
    picture = settle(sky, land < 0.01, edges, colours)
    if scene.finish is not None:
        scene.finish(picture, np.random.default_rng(scene.seed + 2))
    scene.land(picture, Silhouette(shape), np.random.default_rng(scene.seed))
    picture += 0.004 * rng.standard_normal(picture.shape)
    return np.clip(picture, 0, 1), land


def skyline(land: Field) -> list[float]:
    """Where the sky surely still is: down to these heights, for equal steps across."""
    rows = land.shape[0]
    reached = np.where((land > 0.01).any(axis=0), (land > 0.01).argmax(axis=0), rows)
    parts = np.array_split(reached, SKYLINE_STEPS)
    return [round(float(part.min()) / rows, 4) for part in parts]


def main() -> None:
    """Draw every scene, or those named, into a folder."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("names", nargs="*", help="only these scenes (scenes.json is left alone)")
    parser.add_argument("--into", type=Path, default=HERE)
    arguments = parser.parse_args()
    kept = []
    for scene in SCENES:
        if arguments.names and scene.name not in arguments.names:
            continue
        picture, land = draw(scene)
        image = Image.fromarray(np.round(picture * 255).astype(np.uint8))
        image.save(arguments.into / f"{scene.name}.jpg", quality=90, subsampling=0, optimize=True)
        kept.append(
            {
                "name": scene.name,
                "file": f"{scene.name}.jpg",
                "lines": scene.lines,
                "horizon": scene.horizon,
                "Lab": scene.bands,
                "skyline": skyline(land),
            }
        )
    if not arguments.names:
        lines = ",\n".join(json.dumps(entry) for entry in kept)
        (arguments.into / "scenes.json").write_text(f"[\n{lines}\n]\n", encoding="utf-8")


if __name__ == "__main__":
    main()
