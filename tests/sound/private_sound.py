# SPDX-License-Identifier: GPL-3.0-or-later
"""A private sound server whose only output is a pipe that is recorded bit for bit. Works as root without a session."""
import array
import contextlib
import os
import select
import shutil
import subprocess
import tempfile
import threading
import time

RATE = 48_000
NEEDED = {"strace": "strace", "pulseaudio": "pulseaudio", "pactl": "pulseaudio-utils", "Xvfb": "xvfb", "xdotool": "xdotool"}


def require(*programs):
    """Ends with one clear line if a program is missing."""
    for program in programs:
        if shutil.which(program) is None:
            raise SystemExit(f"{program} is missing; apt-get install {NEEDED.get(program, program)}")


class PrivateSound:
    """Use as a context manager: starts the server, records until the end, and always cleans up."""

    def __init__(self, started=True):
        """`started`: the server runs from the beginning."""
        self.started = started

    def __enter__(self):
        require("pulseaudio", "pactl")
        self.folder = tempfile.mkdtemp(prefix="sound-")
        self.pipe = os.path.join(self.folder, "out")
        self.env = dict(
            os.environ,
            XDG_RUNTIME_DIR=self.folder, PULSE_RUNTIME_PATH=self.folder, PULSE_STATE_PATH=self.folder,
            PULSE_COOKIE=os.path.join(self.folder, "cookie"), PULSE_SERVER=f"unix:{self.folder}/native")
        self.arrivals = []  # (monotonic nanoseconds, bytes so far)
        self._data = bytearray()
        self._over = threading.Event()
        os.mkfifo(self.pipe)
        self.server = None
        if self.started:
            self.start_server()
        self._recorder = threading.Thread(target=self._record, daemon=True)
        self._recorder.start()
        return self

    def start_server(self, rate=RATE):
        """Starts the server, or restarts it after it was killed, and returns when it answers."""
        with contextlib.suppress(FileNotFoundError):
            os.unlink(os.path.join(self.folder, "native"))
        self.server = subprocess.Popen([
            "pulseaudio", "-n", "--daemonize=no", "--exit-idle-time=-1", "--use-pid-file=no", "--realtime=no",
            "--high-priority=no", "-L", f"module-native-protocol-unix socket={self.folder}/native auth-anonymous=1",
            "-L", f"module-pipe-sink sink_name=pipe file={self.pipe} format=float32le rate={rate} channels=1"
                  " use_system_clock_for_timing=yes"],
            env=self.env, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        for _ in range(100):
            if self.pactl("info").returncode == 0:
                return
            time.sleep(0.1)
        raise SystemExit("the private sound server does not answer")

    def pactl(self, *arguments):
        return subprocess.run(["pactl", *arguments], env=self.env, stdout=subprocess.DEVNULL,
                              stderr=subprocess.DEVNULL, check=False)

    def listed(self, kind):
        """The indices of the existing `sinks`, `sink-inputs` and so on."""
        said = subprocess.run(["pactl", "list", "short", kind], env=self.env, capture_output=True, text=True, check=True)
        return [line.split()[0] for line in said.stdout.splitlines()]

    def stop_server(self, kill=False):
        if self.server is not None:
            (self.server.kill if kill else self.server.terminate)()
            self.server.wait()
            self.server = None

    def _record(self):
        reader = os.open(self.pipe, os.O_RDWR | os.O_NONBLOCK)
        while not self._over.is_set():
            if select.select([reader], [], [], 0.1)[0]:
                self._data += os.read(reader, 1 << 16)
                self.arrivals.append((time.monotonic_ns(), len(self._data)))
        os.close(reader)

    def samples(self):
        """The samples heard so far."""
        data = bytes(self._data)
        heard = array.array("f")
        heard.frombytes(data[:len(data) // 4 * 4])
        return heard

    def forget(self):
        """Discards what was heard so far: a long recording takes long to read."""
        del self._data[:len(self._data) // 4 * 4]

    def __exit__(self, *_):
        self.stop_server()
        self._over.set()
        self._recorder.join()
        shutil.rmtree(self.folder, ignore_errors=True)
