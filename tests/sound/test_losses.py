# SPDX-License-Identifier: GPL-3.0-or-later
"""Every way to lose a sound device, with a real sound server: `test_losses.py PLAY_COUNTED`.

The samples encode their own number, so that the recording shows what was lost, repeated or silent."""
import signal
import sys
import time
import traceback

from counted_player import CountedPlayer
from private_sound import PrivateSound, RATE
from recording import WRAP
from waiting import Gone, wait

PIPE = ("module-pipe-sink", "sink_name=pipe", "format=float32le", f"rate={RATE}", "channels=1",
        "use_system_clock_for_timing=yes")

HALL = ("module-null-sink", "sink_name=hall", "format=float32le", f"rate={RATE}", "channels=1")  # no resampling


class Stuck(Exception):
    """The sound system hangs, as it does after one kill in dozens: only a restart helps, and the program said so."""


def rises(before, after):
    """By how much the numbers advanced from one piece of sound to the next."""
    return (after[0][1] - before[-1][1]) % WRAP


def breaks(heard):
    """Positions at which a number does not follow the previous one, with that number."""
    return [(place, number) for (_, last), (place, number) in zip(heard, heard[1:]) if (number - last) % WRAP != 1]


def back(player, since):
    """Waits until a lost device plays again."""
    wait("the sound or the line that a restart is needed", lambda: set(player.kinds(since)) & {"playing", "needsRestart"}, 60)
    if "needsRestart" in player.kinds(since):
        raise Stuck
    player.plays()


def goes_on(player, before, seconds):
    """Time went on while nothing was heard: for at least two thirds of `seconds`, with nothing repeated."""
    after = player.heard()[len(before):]
    went = rises(before, after)
    assert seconds * RATE * 2 / 3 < went < (seconds + 10) * RATE, f"the count went on by {went} in {seconds} s"
    assert not breaks(after), f"the sound that came back has breaks: {breaks(after)[:3]}"


def killed(program, away, rate=RATE):
    with PrivateSound() as sound, CountedPlayer(program, sound) as player:
        player.plays()
        reported = len(player.states)
        sound.stop_server(kill=True)
        time.sleep(0.3)
        before = player.heard()
        time.sleep(away)
        sound.start_server(rate)
        back(player, reported)
        assert "silent" in player.kinds(reported), "it never said that nothing is heard"
        assert player.states[-1][1] == rate, f"it plays at {player.states[-1][1]} and not at {rate}"
        goes_on(player, before, away)


def late(program):
    with PrivateSound(started=False) as sound, CountedPlayer(program, sound) as player:
        wait("silence", lambda: player.is_now("silent"))
        time.sleep(4)
        sound.start_server()
        player.plays()
        assert not breaks(player.heard())


def moved(program):
    with PrivateSound() as sound:
        sound.pactl("load-module", *HALL)
        sound.pactl("set-default-sink", "hall")
        with CountedPlayer(program, sound) as player:
            wait("a device that plays", lambda: player.is_now("playing"))
            time.sleep(2)
            assert not player.heard(), "it played through a sink that is not the default"
            for stream in sound.listed("sink-inputs"):
                assert sound.pactl("move-sink-input", stream, "pipe").returncode == 0
            player.plays(2)
            assert set(player.kinds()) <= {"starting", "playing"}, player.kinds()
            assert not breaks(player.heard()), breaks(player.heard())[:3]


def removed(program):
    with PrivateSound() as sound:
        sound.pactl("load-module", *HALL)
        sound.pactl("set-default-sink", "hall")
        with CountedPlayer(program, sound) as player:
            wait("a device that plays", lambda: player.is_now("playing"))
            time.sleep(2)
            sound.pactl("unload-module", "module-null-sink")
            wait("sound from what remains", player.heard)
            player.plays(2)
            assert not breaks(player.heard()), breaks(player.heard())[:3]


def none_left(program):
    with PrivateSound() as sound, CountedPlayer(program, sound) as player:
        player.plays()
        reported = len(player.states)
        sound.pactl("unload-module", "module-pipe-sink")
        wait("silence", lambda: player.is_now("silent"))
        before = player.heard()
        time.sleep(4)
        assert player.is_now("silent"), player.kinds(reported)
        sound.pactl("load-module", *PIPE, f"file={sound.pipe}")
        back(player, reported)
        goes_on(player, before, 4)


def suspended(program):
    with PrivateSound() as sound, CountedPlayer(program, sound) as player:
        player.plays()
        reported = len(player.states)
        sound.pactl("suspend-sink", "pipe", "1")
        wait("silence", lambda: player.is_now("silent"))
        before = player.heard()
        time.sleep(6)
        assert player.kinds(reported) == ["silent"], player.kinds(reported)
        sound.pactl("suspend-sink", "pipe", "0")
        back(player, reported)
        after = player.heard()
        # What the suspended stream still contained may be heard first: it is older and ends at the join.
        joins = [number for _, number in breaks(after[len(before) - 1:])]
        assert (after[-1][1] - before[-1][1]) % WRAP > 4 * RATE, f"time stood still; joins at {joins}"


def dry(program):
    with PrivateSound() as sound, CountedPlayer(program, sound) as player:
        player.plays()
        player.process.send_signal(signal.SIGSTOP)
        time.sleep(0.7)
        player.process.send_signal(signal.SIGCONT)
        wait("a break that is counted", lambda: player.states[-1][2] > 0)
        player.plays()
        assert "silent" not in player.kinds(), player.kinds()
        assert not breaks(player.heard()), "a break loses no sample"
        places = [place for place, _ in player.heard()]
        assert any(b - a > RATE // 10 for a, b in zip(places, places[1:])), "nothing was silent: no break was made"


CASES = {
    "the server is killed and back after 1 s": lambda program: killed(program, 1),
    "the server is killed and back after 10 s": lambda program: killed(program, 10),
    "the server is back at another rate": lambda program: killed(program, 1, 44_100),
    "the server comes after the start": late,
    "the stream is moved to another sink": moved,
    "the default sink is removed": removed,
    "no sink is left, and one comes": none_left,
    "the sink is suspended and resumed": suspended,
    "the device runs dry": dry,
}


def holds(name, case, program):
    for attempt in range(3):
        began = time.monotonic()
        try:
            case(program)
        except Stuck:
            print(f"stuck  {name}: said that a restart is needed (attempt {attempt + 1})", flush=True)
            continue
        except (AssertionError, Gone, IndexError):
            print(f"FAILED {name}\n{traceback.format_exc()}", flush=True)
            return False
        print(f"holds  {name} ({time.monotonic() - began:.1f} s)", flush=True)
        return True
    print(f"FAILED {name}: three times stuck", flush=True)
    return False


if __name__ == "__main__":
    WANTED = sys.argv[2:]
    RESULTS = [holds(name, case, sys.argv[1]) for name, case in CASES.items()
               if not WANTED or any(word in name for word in WANTED)]
    sys.exit(0 if all(RESULTS) else 1)
