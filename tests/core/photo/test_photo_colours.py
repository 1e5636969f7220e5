"""Profiles, gamma and inks become the sRGB that published primaries and references demand."""

from __future__ import annotations

import io
import struct
import zlib

import numpy as np
import pytest
import tifffile
from later import Later
from photo_files import (
    BOTTOM,
    HEIGHT,
    MIDDLE,
    TOP,
    WIDTH,
    assert_scene,
    cmyk_profile,
    codes,
    encode,
    grey_profile,
    icc_profile,
    jpeg,
    png_chunk,
    rgb_profile,
    scene,
    with_jpeg_segment,
    with_png_chunk,
)
from PIL import Image, ImageCms

from core.photo import open_photo
from core.photo.bare_jpeg import minimal_exif
from core.photo.spaces import BT709, D65, XYZ_D50_TO_LINEAR, encoding_from_codes
from core.photo.spaces import primaries_to_XYZ_D50 as own_primaries

colour = Later("colour")

# The spaces as colour-science publishes them, each from its standard: Display P3 (SMPTE EG
# 432-1 and IEC 61966-2-1), Adobe RGB (1998) 4.3, ROMM RGB (ISO 22028-2).
SPACES = {"Display P3": None, "Adobe RGB (1998)": 563 / 256, "ProPhoto RGB": 1.8}
D50 = (0.34567, 0.35850)  # ICC.1:2022: 0.9642 1.0000 0.8249


def space(name):
    return colour.RGB_COLOURSPACES[name]


def matrix_D50(name):
    """Linear RGB to XYZ under D50 by colour-science's Bradford."""
    rgb = space(name)
    white = colour.xy_to_XYZ(rgb.whitepoint)
    adapt = colour.adaptation.matrix_chromatic_adaptation_VonKries(
        white, np.array([0.9642, 1.0, 0.8249]), transform="Bradford"
    )
    return adapt @ rgb.matrix_RGB_to_XYZ


def linear_of(name, codes_8bit, gamma):
    encoded = np.asarray(codes_8bit, dtype=float) / 255
    return colour.models.eotf_sRGB(encoded) if gamma is None else encoded**gamma


def expected(name, codes_8bit):
    linear = linear_of(name, codes_8bit, SPACES[name])
    XYZ = colour.XYZ_to_sRGB(
        linear @ matrix_D50(name).T, illuminant=D50, chromatic_adaptation_transform="Bradford"
    )
    return np.clip(XYZ, 0, 1) * 255


def profile(name):
    return rgb_profile(matrix_D50(name), SPACES[name])


@pytest.mark.parametrize("name", SPACES)
@pytest.mark.parametrize("form", ["PNG", "JPEG", "WEBP", "TIFF"])
def test_wide_spaces(name, form):
    options = {"JPEG": {"quality": 97, "subsampling": 0}, "WEBP": {"lossless": True}}
    data = encode(scene(), form, icc_profile=profile(name), **options.get(form, {}))
    photo = open_photo(data)
    assert_scene(photo, 3 if form == "JPEG" else 1, expected(name, [TOP, MIDDLE, BOTTOM]))
    assert np.abs(expected(name, [TOP]) - TOP).max() > 8  # ignoring the profile would show
    # The same numbers in ProPhoto name colours that sRGB does not hold.
    assert bool(photo.notices) == (name == "ProPhoto RGB")


def test_16_bit_with_a_profile_is_not_rounded_twice():
    """ProPhoto at 16 bits: within half a code of the exact answer."""
    rng = np.random.default_rng(5)
    samples = rng.integers(12_000, 50_000, (8, 3))
    array = np.repeat(np.repeat(samples.reshape(2, 4, 3), 8, axis=0), 8, axis=1)
    rows = b"".join(b"\0" + row.astype(">u2").tobytes() for row in array)

    icc = profile("ProPhoto RGB")
    header = struct.pack(">IIBBBBB", 32, 16, 16, 2, 0, 0, 0)
    parts = [
        (b"IHDR", header),
        (b"iCCP", b"x\0\0" + zlib.compress(icc)),
        (b"IDAT", zlib.compress(rows)),
        (b"IEND", b""),
    ]
    photo = open_photo(b"\x89PNG\r\n\x1a\n" + b"".join(png_chunk(*part) for part in parts))
    linear = (array / 65535) ** (round(1.8 * 256) / 256) @ matrix_D50("ProPhoto RGB").T
    want = colour.XYZ_to_sRGB(linear, illuminant=D50, chromatic_adaptation_transform="Bradford")
    np.testing.assert_allclose(photo.pixels, np.clip(want, 0, 1) * 255, atol=0.6)


def test_agrees_with_littlecms_over_the_cube():
    """LittleCMS, through Pillow, on the same P3 profile: within one code where sRGB holds it."""
    grid = np.stack(np.meshgrid(*[np.arange(0, 256, 15)] * 3), axis=-1).astype(np.uint8)
    image = Image.fromarray(grid.reshape(-1, 18 * 3, 3))
    icc = profile("Display P3")
    photo = open_photo(encode(image, "PNG", icc_profile=icc))
    reference = ImageCms.profileToProfile(
        image,
        ImageCms.ImageCmsProfile(io.BytesIO(icc)),
        ImageCms.createProfile("sRGB"),
        ImageCms.Intent.RELATIVE_COLORIMETRIC,
    )
    difference = photo.pixels.astype(int) - np.asarray(reference)
    assert np.abs(difference).max() <= 1


def test_primaries_give_the_published_matrices():
    """sRGB to XYZ under D50, as printed in ICC's sRGB v2 profile (tags rXYZ, gXYZ, bXYZ)."""
    printed = [[0.4361, 0.3851, 0.1431], [0.2225, 0.7169, 0.0606], [0.0139, 0.0971, 0.7141]]
    np.testing.assert_allclose(own_primaries(BT709, D65), printed, atol=2e-4)
    np.testing.assert_allclose(XYZ_D50_TO_LINEAR @ own_primaries(BT709, D65), np.eye(3), atol=1e-12)


def test_an_srgb_profile_changes_nothing():
    icc = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    rng = np.random.default_rng(1)
    array = rng.integers(0, 256, (40, 50, 3), dtype=np.uint8)
    photo = open_photo(encode(array, "PNG", icc_profile=icc))
    np.testing.assert_array_equal(photo.pixels, array)


def test_colours_outside_srgb_are_told():
    vivid = scene((40, 90, 255), (255, 210, 0), (255, 70, 10))
    photo = open_photo(encode(vivid, "PNG", icc_profile=profile("Display P3")))
    want = expected("Display P3", [(40, 90, 255), (255, 210, 0), (255, 70, 10)])
    assert_scene(photo, 1, want)
    assert any("vivid" in notice for notice in photo.notices)


class TestGrey:
    def test_grey_gamma(self):
        grey = scene(190, 120, 30)[..., 0]
        photo = open_photo(encode(grey, "PNG", icc_profile=grey_profile(1.8)))
        linear = (np.array([190, 120, 30]) / 255) ** (round(1.8 * 256) / 256)
        want = colour.models.eotf_inverse_sRGB(linear) * 255
        assert_scene(photo, 1, np.repeat(want[:, None], 3, axis=1), mark=None)

    def test_rgb_profile_in_a_grey_picture_stays_grey(self):
        grey = scene(190, 120, 30)[..., 0]
        photo = open_photo(encode(grey, "PNG", icc_profile=profile("Display P3")))
        assert_scene(photo, 1, [(v, v, v) for v in (190, 120, 30)])

    def test_grey_profile_in_a_colour_picture_is_ignored_and_told(self):
        photo = open_photo(encode(scene(), "PNG", icc_profile=grey_profile(1.8)))
        assert_scene(photo, 0)
        assert any("does not fit" in notice for notice in photo.notices)


class TestBrokenProfiles:
    @pytest.mark.parametrize("keep", [10, 128, 140, 300])
    def test_cut_short(self, keep):
        photo = open_photo(encode(scene(), "PNG", icc_profile=profile("Display P3")[:keep]))
        assert_scene(photo, 0)
        assert any("damaged" in notice for notice in photo.notices)

    def test_not_zlib(self):
        data = with_png_chunk(encode(scene(), "PNG"), b"iCCP", b"x\0\0" + b"\xff" * 40)
        photo = open_photo(data)
        assert_scene(photo, 0)
        assert any("damaged" in notice for notice in photo.notices)

    def test_primaries_that_make_no_white(self):
        photo = open_photo(encode(scene(), "PNG", icc_profile=rgb_profile(np.eye(3) * 0.01)))
        assert_scene(photo, 0)
        assert any("damaged" in notice for notice in photo.notices)

    def test_tables_that_are_none(self):
        broken = icc_profile(b"RGB ", {b"A2B0": b"mft1" + bytes(60)}, pcs=b"Lab ")
        photo = open_photo(encode(scene(), "PNG", icc_profile=broken))
        assert_scene(photo, 0)
        assert any("damaged" in notice for notice in photo.notices)


def test_adobe_rgb_named_only_by_exif():
    """DCF 2.0: ColorSpace 65535 and InteroperabilityIndex R03, no profile embedded."""

    data = with_jpeg_segment(jpeg(quality=97), 0xE1, b"Exif\0\0" + minimal_exif(1, True))
    assert_scene(open_photo(data), 3, expected("Adobe RGB (1998)", [TOP, MIDDLE, BOTTOM]))


class TestPngGamma:
    def test_linear_samples(self):
        linear = colour.models.eotf_sRGB(scene() / 255)
        array = np.rint(linear * 255).astype(np.uint8)
        data = with_png_chunk(encode(array, "PNG"), b"gAMA", struct.pack(">I", 100_000))
        assert_scene(open_photo(data), 3)

    @pytest.mark.parametrize("number", [45_455, 0, 1, 4_000_000_000])
    def test_usual_and_impossible_gamma_mean_srgb(self, number):
        data = with_png_chunk(encode(scene(), "PNG"), b"gAMA", struct.pack(">I", number))
        assert_scene(open_photo(data), 0)

    def test_chromaticities(self):
        name = "Adobe RGB (1998)"
        xy = [space(name).whitepoint, *space(name).primaries]
        chunk = struct.pack(">8I", *(round(v * 100_000) for v in np.ravel(xy)))
        data = with_png_chunk(encode(scene(), "PNG"), b"cHRM", chunk)
        data = with_png_chunk(data, b"gAMA", struct.pack(">I", round(100_000 * 256 / 563)))
        # 45471 is the power 2.2 that everybody takes for sRGB's curve: only the primaries count.
        linear = colour.models.eotf_sRGB(np.array([TOP, MIDDLE, BOTTOM]) / 255)
        want = colour.XYZ_to_sRGB(
            linear @ matrix_D50(name).T, illuminant=D50, chromatic_adaptation_transform="Bradford"
        )
        assert_scene(open_photo(data), 1, want * 255)

    def test_code_points(self):
        data = with_png_chunk(encode(scene(), "PNG"), b"cICP", bytes([12, 13, 0, 1]))
        assert_scene(open_photo(data), 1, expected("Display P3", [TOP, MIDDLE, BOTTOM]))


def test_hdr_curves_follow_bt2100():
    """colour-science's ST 2084 and HLG; white is 203 cd/m2 and a signal of 75% (BT.2408)."""
    signal = np.linspace(0.02, 0.75, 30)
    pq, notices = encoding_from_codes(9, 16)
    np.testing.assert_allclose(
        pq.curve(0)(signal), colour.models.eotf_ST2084(signal) / 203, rtol=1e-6
    )
    assert len(notices) == 1
    hlg, _ = encoding_from_codes(9, 18)
    reference = colour.models.oetf_inverse_BT2100_HLG(signal)
    np.testing.assert_allclose(
        hlg.curve(0)(signal), reference / colour.models.oetf_inverse_BT2100_HLG(0.75), rtol=1e-4
    )


class TestInks:
    """A press profile of our own whose 16 full-ink corners are known Lab colours."""

    INKS = np.zeros((HEIGHT, WIDTH, 4), np.uint8)
    INKS[:48, :, 0], INKS[48:96, :, 2], INKS[96:, :, 1:3] = 255, 255, 255

    @staticmethod
    def Lab(c, m, y, k):
        return (
            max(95 - 35 * c - 45 * m - 8 * y - 80 * k, 5),
            (-30 * c + 65 * m - 5 * y) * (1 - k),
            (-40 * c - 5 * m + 80 * y) * (1 - k),
        )

    def wanted(self):
        corners = [(1, 0, 0, 0), (0, 0, 1, 0), (0, 1, 1, 0)]
        XYZ = colour.Lab_to_XYZ(np.array([self.Lab(*c) for c in corners]), illuminant=D50)
        sRGB = colour.XYZ_to_sRGB(XYZ, illuminant=D50, chromatic_adaptation_transform="Bradford")
        return np.clip(sRGB, 0, 1) * 255

    def files(self, **options):
        ink = self.INKS.astype(float)
        adobe = encode(Image.fromarray(self.INKS, "CMYK"), "JPEG", quality=97, **options)
        at = adobe.index(b"\xff\xee")
        size = 2 + int.from_bytes(adobe[at + 2 : at + 4], "big")
        upright = encode(Image.fromarray(255 - self.INKS, "CMYK"), "JPEG", quality=97, **options)
        # YCCK: what a JPEG stores is the YCbCr of the inks' complement, K apart; Pillow inverts
        # on saving, and the transform byte of Adobe's segment then says what it is.
        ycc = np.asarray(Image.fromarray(self.INKS[..., :3], "RGB").convert("YCbCr"))
        stored = np.dstack([ycc, 255 - ink[..., 3]]).astype(np.uint8)
        ycck = encode(Image.fromarray(255 - stored, "CMYK"), "JPEG", quality=97, **options)
        byte = ycck.index(b"\xff\xeeadobe".replace(b"adobe", b"\x00\x0eAdobe")) + 15
        return {
            "adobe": adobe,
            "not inverted": upright[:at] + upright[at + size :],
            "ycck": ycck[:byte] + b"\x02" + ycck[byte + 1 :],
            "tiff": encode(Image.fromarray(self.INKS, "CMYK"), "TIFF", **options),
        }

    @pytest.mark.parametrize("kind", ["adobe", "not inverted", "ycck", "tiff"])
    def test_press_profile(self, kind):
        photo = open_photo(self.files(icc_profile=cmyk_profile(self.Lab))[kind])
        found, _ = codes(photo)
        np.testing.assert_allclose(found, self.wanted(), atol=4)
        assert photo.notices == ()

    @pytest.mark.parametrize("kind", ["adobe", "not inverted", "ycck", "tiff"])
    def test_without_a_profile_hues_are_the_right_way_round(self, kind):
        photo = open_photo(self.files()[kind])
        (cyan, yellow, red), _ = codes(photo)
        assert cyan[2] > cyan[0] + 100
        assert yellow[0] > yellow[2] + 100
        assert red[0] > red[2] + 100
        assert any("CMYK" in notice for notice in photo.notices)


def test_lab_tiff():
    """CIELAB under D50, colour-science's conversion."""
    linear = colour.models.eotf_sRGB(scene() / 255)
    XYZ = colour.RGB_to_XYZ(linear, "sRGB", D50, "Bradford")
    Lab = colour.XYZ_to_Lab(XYZ, illuminant=D50)
    stored = np.dstack([np.rint(Lab[..., 0] * 2.55), np.rint(Lab[..., 1:]) % 256]).astype(np.uint8)

    buffer = io.BytesIO()
    tifffile.imwrite(buffer, stored, photometric="cielab")
    assert_scene(open_photo(buffer.getvalue()), 3)
