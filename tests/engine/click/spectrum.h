// SPDX-License-Identifier: GPL-3.0-or-later
// A plain discrete Fourier sum over the frequencies a click can have: slow, and independent of the engine.
#pragma once

#include <cmath>
#include <complex>
#include <numbers>
#include <span>

namespace piolo::engine {

struct Spectrum {
    double peakHertz = 0;     ///< the strongest frequency
    double centroidHertz = 0; ///< the centre of the energy
    double shareInBand = 0;   ///< of the energy, from 1 to 5 kHz
};

inline Spectrum spectrumOf(std::span<const float> sound, int rate) {
    Spectrum result;
    double highest = 0;
    double energy = 0;
    double weighted = 0;
    double inBand = 0;
    for (double hertz = 50; hertz < std::min(0.5 * rate, 20'000.0); hertz += 10) {
        std::complex<double> sum = 0;
        const auto turn = std::polar(1.0, -2 * std::numbers::pi * hertz / rate);
        std::complex<double> phase = 1;
        for (const float value : sound) {
            sum += static_cast<double>(value) * phase;
            phase *= turn;
        }
        const double power = std::norm(sum);
        energy += power;
        weighted += power * hertz;
        if (hertz >= 1'000 && hertz <= 5'000) inBand += power;
        if (power > highest) {
            highest = power;
            result.peakHertz = hertz;
        }
    }
    result.centroidHertz = weighted / energy;
    result.shareInBand = inBand / energy;
    return result;
}

} // namespace piolo::engine
