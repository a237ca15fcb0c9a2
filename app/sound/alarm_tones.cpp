// SPDX-License-Identifier: GPL-3.0-or-later
#include "sound/alarm_tones.h"

#include <QtGlobal>

// Grades of sources: A read itself, B quoted by others, C recalled by others without a quotation.
//  - A pulse has a fundamental of 150 to 1000 Hz and at least 4 harmonics within 300 to 4000 Hz and 15 dB of it
//    (IEC 60601-1-8, as quoted by secondary sources: B).
//  - High priority is "C C C - C C", medium "C C C" (the same: B). Pulses last 75 to 200 ms or 125 to 250 ms, bursts
//    are 2.5 to 15 s or 2.5 to 30 s apart (its tables 3 and 4: C).
//  - Tones of different meaning are at least 20 % apart in frequency; two levels are at least 6 dB(A) apart, the lower
//    about 10 dB(A) above what is heard beside it, none above 90 dB(A) (NUREG-0700: A). At least 15 dB above the noise
//    (ISO 7731: C). The bench's speaker sets how loud: these are shares of it.
// That each burst rises, by a quarter, is ours: a compressor hums on one note.
namespace strandbench {
namespace {

// Every frequency of one kind is 20 % and more away from every frequency of another; the more urgent the higher.
// The overtones reach to about 3.4 kHz, where an ear still hears best and a small speaker has no bass.
struct Pitch {
    double from;
    double to;
    int overtones;
};

Pitch pitchOf(AlarmKind kind)
{
    switch (kind) {
    case AlarmKind::EdgesSoon:
        return {560, 700, 4};
    case AlarmKind::Gels:
        return {370, 460, 6};
    case AlarmKind::SandUntil:
        return {245, 305, 10};
    case AlarmKind::SandFrom:
        return {160, 200, 16};
    }
    Q_UNREACHABLE();
}

bool highPriority(AlarmKind kind) { return kind == AlarmKind::EdgesSoon || kind == AlarmKind::Gels; }

} // namespace

Tone toneOf(AlarmKind kind)
{
    const Pitch pitch = pitchOf(kind);
    Tone tone;
    tone.fromHertz = pitch.from;
    tone.toHertz = pitch.to;
    tone.overtones = pitch.overtones;
    tone.rise = Rise::SoundBySound;
    if (highPriority(kind)) {
        tone.sound = seconds(0.15);
        tone.pause = seconds(0.1);
        tone.times = 5;
        tone.restAfter = 3;
        tone.loudness = 1;
    } else {
        tone.sound = seconds(0.2);
        tone.pause = seconds(0.2);
        tone.times = 3;
        tone.loudness = 0.55;
    }
    return tone;
}

Duration pauseAfter(AlarmKind kind) { return highPriority(kind) ? seconds(2.5) : seconds(8); }

Tone silentCheck()
{
    Tone tone;
    tone.sound = seconds(0.05);
    tone.times = 1;
    tone.loudness = 0;
    return tone;
}

} // namespace strandbench
