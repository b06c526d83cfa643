# SPDX-License-Identifier: GPL-3.0-or-later
"""The sound server is killed under the window, again and again, while a player drills:
`test_kills.py PIOLO KILLS [SEED]`.

After each kill, the window responds, the practice log is complete, and the sound comes back at the beginning of a bar, or one line says that a restart is needed. Then the window is started again and the test continues."""
import os
import random
import statistics
import sys
import time

import practice
from player_window import Display, Window
from private_sound import PrivateSound, RATE, require
from recording import onsets, Origin, period
from waiting import Gone, wait
from x_ping import Pinger

SECONDS_TO_COME_BACK = 45
FLOOR, TOP = 100, 140  # the passage's tempi


class Tally:
    def __init__(self):
        self.kills, self.stuck, self.void, self.faults = 0, 0, 0, []
        self.answers, self.returns, self.left_behind = [], [], 0


def sound_threads(process):
    """How many threads of the process are, or were, sound threads."""
    count = 0
    for thread in os.listdir(f"/proc/{process}/task"):
        with open(f"/proc/{process}/task/{thread}/comm", encoding="utf-8") as file:
            count += file.read().strip() == "sound"
    return count


def log_faults(facts):
    """The log is complete: consecutive numbers, no id twice."""
    faults = []
    if len({fact["id"] for fact in facts}) != len(facts):
        faults.append("an id is there twice")
    numbers = [fact["seq"] for fact in facts]
    if numbers and numbers != list(range(numbers[0], numbers[0] + len(numbers))):
        faults.append(f"numbers are missing: {numbers}")
    return faults


def pieces(heard):
    """The onsets, split where a pause is longer than a beat at the lowest tempo."""
    longest = period(str(FLOOR), RATE) + 1
    found = [[heard[0]]]
    for last, onset in zip(heard, heard[1:]):
        if onset[0] - last[0] > longest:
            found.append([])
        found[-1].append(onset)
    return found


def on_a_grid(piece):
    for tempo in range(FLOOR, TOP + 1):
        part = period(str(tempo), RATE, practice.PARTS)
        origin, first = Origin(), piece[0][0]
        if all(origin.hear(place, round((place - first) / part) * part) for place, _ in piece):
            return True
    return False


def join_faults(heard):
    """What is heard after a silence must begin with a bar and stay on the grid of one tempo up to the next pause."""
    faults = []
    for piece in pieces(heard):
        if piece[0][1] != 1.0:
            faults.append(f"sound began inside a bar: {piece[:3]}")
        if not on_a_grid(piece):
            faults.append(f"what came back lies on no grid: {piece[:8]}")
    return faults


class Player:
    """Starts the window and the drill, and restarts them if only that helps."""

    def __init__(self, piolo, sound, display, tally):
        self.piolo, self.sound, self.display, self.tally = piolo, sound, display, tally
        self.pinger = Pinger(display.name)
        self.window = None

    def begin(self):
        self.window = Window([self.piolo], self.sound, self.display, pauses=False)
        self.window.appear()
        self.drill(0)

    def drill(self, since):
        self.window.press("space")
        wait("the drill", lambda: self.back(since), 60)

    def back(self, since):
        """The onsets after sample `since`, if there are enough to judge."""
        heard = self.sound.samples()[since:]
        found = onsets(heard)
        return found if len(found) >= 6 else None

    def check_window(self):
        answer = self.pinger.answers(int(self.window.id))
        if answer is None:
            self.tally.faults.append("the window did not answer within 2 s")
        else:
            self.tally.answers.append(answer)

    def kill(self, wait_before, away):
        time.sleep(wait_before)
        self.sound.stop_server(kill=True)
        self.tally.kills += 1
        time.sleep(0.2)
        since = len(self.sound.samples())
        self.check_window()
        time.sleep(away)
        self.sound.start_server()
        began = time.monotonic()
        try:
            heard = wait("sound", lambda: self.back(since), SECONDS_TO_COME_BACK)
            self.tally.returns.append(time.monotonic() - began)
            self.tally.faults += join_faults(heard)
        except Gone:
            self.start_again()
        self.check_window()
        self.tally.faults += log_faults(practice.facts(self.window.folder))

    def start_again(self):
        left = sound_threads(self.window.process.pid) - 1
        self.tally.left_behind += left
        self.tally.stuck += 1
        if left < 1:
            self.tally.faults.append(f"no sound came back, though no thread is stuck; the practice log ends with "
                                     f"{practice.facts(self.window.folder)[-2:]}")
        self.end()
        self.begin()

    def end(self):
        self.check_window()
        self.tally.void += sum(1 for fact in practice.facts(self.window.folder) if fact.get("reason") == "soundLost")
        before = time.monotonic()
        said = self.window.close()
        if time.monotonic() - before > 9:
            self.tally.faults.append("the window did not end when it was asked to")
        return said


def report(tally):
    print(f"{tally.kills} kills; {len(tally.returns)} times the sound came back by itself, "
          f"{tally.stuck} times after a restart ({tally.left_behind} threads left behind); "
          f"{tally.void} runs void for lost sound")
    if tally.answers:
        print(f"the window answered {len(tally.answers)} times, after {max(tally.answers) * 1000:.0f} ms at most")
    if tally.returns:
        print(f"sound after the server's return: median {statistics.median(tally.returns):.1f} s, "
              f"at most {max(tally.returns):.1f} s")
    for fault in tally.faults:
        print(f"  {fault}")


def main(piolo, kills, seed):
    print(f"seed {seed}, {kills} kills", flush=True)
    chance = random.Random(seed)
    tally = Tally()
    with PrivateSound() as sound, Display() as display:
        player = Player(piolo, sound, display, tally)
        try:
            player.begin()
            for number in range(kills):
                long_away = number % 10 == 1
                player.kill(chance.uniform(0, 3), chance.uniform(7, 10) if long_away else chance.uniform(0, 2))
                print(f"  kill {number + 1}: {len(tally.returns)} back, {tally.stuck} stuck, {len(tally.faults)} faults", flush=True)
                sound.forget()
            player.window.press("Escape")
            player.end()
        except Gone as gone:
            tally.faults.append(f"{gone}; the window said: {player.window.close()[-1000:]}")
        player.pinger.close()
    report(tally)
    if kills >= 3 and 2 * tally.stuck > tally.kills:
        tally.faults.append("more often stuck than not")
    return 1 if tally.faults or not tally.returns else 0


if __name__ == "__main__":
    require("Xvfb", "xdotool", "pulseaudio", "pactl")
    sys.exit(main(sys.argv[1], int(sys.argv[2]), int(sys.argv[3]) if len(sys.argv) > 3 else random.SystemRandom().randrange(1 << 31)))
