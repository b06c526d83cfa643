# SPDX-License-Identifier: GPL-3.0-or-later
"""No network: `test_network.py PIOLO`. The window with a short drill by real keys, and every verb, under strace; every socket they open must be local and belong to the sound server or the screen. The session bus, which Qt would use, is removed from the environment."""
import os
import re
import signal
import subprocess
import sys
import tempfile

import practice
from player_window import Display, Window
from private_sound import PrivateSound, require
from waiting import Gone, wait

NAME_CACHE = "/var/run/nscd/"  # the C library asks it for the user's home folder where it is running
TRACE = ["strace", "-f", "-qq", "-e", "trace=network", "-o"]
SOCKET = re.compile(r"\bsocket(?:pair)?\(([A-Z_0-9]+)")
CALL = re.compile(r"\b(?:connect|bind|sendto|sendmsg)\(.*?sa_family=([A-Z_0-9]+)(?:, sun_path=@?\"([^\"]*)\")?")
SCORE = os.path.join(os.path.dirname(os.path.abspath(__file__)), "../../samples/ferrywake.musicxml")
WITHOUT_WINDOW = (
    ("--help",), ("click", "--tempo", "137", "--bars", "2", "--out", "{}/a.wav"),
    ("track", "--start", "60", "--target", "64", "--climb", "4", "--bars", "1", "--runs", "1", "--out", "{}/a.mid"),
    ("ladder", "--start", "72", "--target", "96", "--drop", "4", "--climb", "2", "--clean-runs", "5"),
    ("curve", "March, letter B", "--folder", "{}/folder", "--out", "{}/a.svg"),
    ("sheet", "March, letter B", "--folder", "{}/folder", "--out", "{}/a.pdf"), ("check", "{}/folder"),
    ("export", "March, letter B", "--folder", "{}/folder", "--out", "{}/a.piolo.json"),
    ("import", "{}/a.piolo.json", "--folder", "{}/other"), ("bars", SCORE),
    ("bars", SCORE, "--from", "0", "--to", "4", "--out", "{}/b.piolo.json"), ("import", "{}/b.piolo.json", "--folder", "{}/other"),
    ("scale", "--key", "D", "--instrument", "oboe", "--out", "{}/d.mid"),
    ("model", "Ferrywake, bars 0 to 4", "--folder", "{}/other", "--out", "{}/b.wav"),
    ("export", "Ferrywake, bars 0 to 4", "--folder", "{}/other", "--out", "{}/b.musicxml"),
    ("staff", "Ferrywake, bars 0 to 4", "--folder", "{}/other", "--out", "{}/b.svg"))


def faults(trace, allowed):
    """Every socket in an strace that is not local or leads to a path not in `allowed`."""
    found = []
    for line in trace.splitlines():
        opened, called = SOCKET.search(line), CALL.search(line)
        if opened and opened.group(1) not in ("AF_UNIX", "AF_LOCAL"):
            found.append(line)
        if called and (called.group(1) != "AF_UNIX" or not any((called.group(2) or "").startswith(path) for path in allowed)):
            found.append(line)
    return found


def places(trace):
    """The local sockets that were used, for information."""
    return sorted({call.group(2) for call in map(CALL.search, trace.splitlines()) if call and call.group(2)})


def the_check_can_fail():
    """A program that does something forbidden is detected, and strace works here."""
    with tempfile.NamedTemporaryFile("r") as trace:
        call = "import socket; socket.socket(socket.AF_INET, socket.SOCK_DGRAM).connect(('127.0.0.1', 9))"
        subprocess.run([*TRACE, trace.name, sys.executable, "-c", call], check=True)
        assert faults(trace.read(), ["/"]), "a program that calls the network was not found"
    line = 'connect(3, {sa_family=AF_UNIX, sun_path="/run/elsewhere"}, 110) = 0'
    assert faults(line, ["/tmp/.X11-unix/"]) and not faults(line, ["/run/elsewhere"])


def verbs_left_out(piolo):
    """The verbs that the help lists but that are not tried here."""
    said = subprocess.run([piolo, "--help"], capture_output=True, text=True, check=True).stdout
    return set(re.findall(r"^piolo ([a-z]+) ", said, re.MULTILINE)) - {words[0] for words in WITHOUT_WINDOW}


def window_trace(piolo):
    with PrivateSound() as sound, Display() as display, tempfile.NamedTemporaryFile("r") as trace:
        sound.env.pop("DBUS_SESSION_BUS_ADDRESS", None)
        window = Window([*TRACE, trace.name, piolo], sound, display)
        try:
            window.play()
            window.press("space")
            wait("a run in the practice log", window.runs, 120)
            window.press("Escape")
            wait("silence after Escape", window.is_silent)
        finally:
            for child in window.children():  # strace ignores a signal that is sent to strace itself
                os.kill(int(child), signal.SIGTERM)
            said = window.close()
        reported = trace.read()
        allowed = [os.path.join(sound.folder, "native"), "/tmp/.X11-unix/", NAME_CACHE]
        if not any(place.startswith(allowed[0]) for place in places(reported)):
            raise Gone(f"the sound server was not called, so the trace shows nothing: {said[-500:]}")
        return reported, allowed


def verb_trace(piolo, arguments, home):
    trace = os.path.join(home, "trace")
    words = [word.format(home) for word in arguments]
    # A program built with the leak sanitizer cannot look for leaks while it is being traced.
    env = dict(os.environ, HOME=home, XDG_CONFIG_HOME=home, XDG_STATE_HOME=home, XDG_DATA_HOME=home,
               ASAN_OPTIONS=os.environ.get("ASAN_OPTIONS", "") + ":detect_leaks=0")
    done = subprocess.run([*TRACE, trace, piolo, *words], input="clean\nmiss\n", text=True, capture_output=True, check=False,
                          env=env)
    if done.returncode != 0:
        raise Gone(f"{' '.join(words)} ended with {done.returncode}: {done.stderr}")
    with open(trace, encoding="utf-8") as file:
        return file.read()


def main(piolo):
    the_check_can_fail()
    found = [f"{verb} is not tried" for verb in verbs_left_out(piolo)]
    with tempfile.TemporaryDirectory() as home:
        practice.write_folder(os.path.join(home, "folder"))
        for arguments in WITHOUT_WINDOW:
            said = verb_trace(piolo, arguments, home)
            found += [f"{arguments[0]}: {line}" for line in faults(said, [NAME_CACHE])]
            print(f"{arguments[0]}: {len(said.splitlines())} calls of the network kind")
    reported, allowed = window_trace(piolo)
    found += [f"window: {line}" for line in faults(reported, allowed)]
    print(f"window: {len(reported.splitlines())} calls of the network kind; sockets led to {places(reported)}")
    for fault in found:
        print(f"  {fault}")
    return 1 if found else 0


if __name__ == "__main__":
    require("strace", "Xvfb", "xdotool", "pulseaudio", "pactl")
    sys.exit(main(sys.argv[1]))
