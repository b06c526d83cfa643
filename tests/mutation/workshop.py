# SPDX-License-Identifier: GPL-3.0-or-later
"""A copy of the tree in which changes are made, built and tested."""
import json
import os
import re
import resource
import shlex
import shutil
import subprocess
import time
from pathlib import Path

from switchboard import HEADER, VARIABLE, Switchboard

_COPIED = ("CMakeLists.txt", "src", "qml", "tests", "samples", "docs")
_FLAGS = "-w -O1 -D_GLIBCXX_ASSERTIONS"
_MEMORY = 2 << 30  # the memory limit of a test program in bytes: an endlessly growing loop ends soon
_ROUNDS = 8  # of removing what does not compile


class Workshop:
    def __init__(self, tree, folder, steps):
        """`steps` maps the room of a changed file to (program, arguments), the quick ones first."""
        self._folder = Path(folder).resolve()
        self._tree = self._folder / "tree"
        self._build = self._folder / "build"
        self._steps = steps
        self._seconds = {}
        self._tree.mkdir(parents=True, exist_ok=True)
        for name in _COPIED:
            _bring(tree / name, self._tree / name)

    def source(self, file):
        return (self._tree / "src" / file).read_text()

    def headers(self):
        return [path.read_text() for path in sorted((self._tree / "src").rglob("*.h"))]

    def prepare(self):
        """Builds the unchanged copy and runs its tests: a test that already fails can catch nothing."""
        (self._tree / "src/planted.h").write_text(HEADER)
        self._call(["cmake", "-S", self._tree, "-B", self._build, "-G", "Ninja", "-DCMAKE_BUILD_TYPE=None",
                    f"-DCMAKE_CXX_FLAGS={_FLAGS}"], "the unchanged tree cannot be configured")
        self._build_all("the unchanged tree does not build")
        self._try_unchanged()

    def alone(self, mutant):
        """The verdict on a change that needs a build of its own: "does not compile", "survived", or which test caught it."""
        path = self._tree / "src" / mutant.file
        original = path.read_text()
        path.write_text(mutant.applied(original))
        try:
            for step in self._steps[_room(mutant)]:
                if self._call(["ninja", "-C", self._build, "-j1", step[0]]).returncode:
                    return "does not compile"
                if not self._passes(step):
                    return step[0]
            return "survived"
        finally:
            path.write_text(original)

    def wire(self, numbered):
        """Builds all changes inside functions dormant in one build; returns the numbers of those in it and of those that do not
        compile. The others need a build of their own."""
        asleep, broken = {}, set()
        for file in dict.fromkeys(mutant.file for mutant in numbered.values()):
            board = Switchboard(self.source(file), {n: m for n, m in numbered.items() if m.file == file})
            wanted = set(board.sleeping)
            self._settle(board, file)
            broken |= wanted - set(board.sleeping)
            asleep |= board.sleeping
        self._build_all("the sleeping changes do not build together")
        self._try_unchanged()
        return asleep, broken

    def woken(self, number, mutant):
        """The verdict on a dormant change."""
        for step in self._steps[_room(mutant)]:
            if not self._passes(step, number):
                return step[0]
        return "survived"

    def _settle(self, board, file):
        path = self._tree / "src" / file
        command = self._compile_command(path)
        for _ in range(_ROUNDS):
            text = board.text()
            path.write_text(text)
            done = self._call([*command, "-fsyntax-only", "-fmax-errors=0"])
            if done.returncode == 0:
                return
            pattern = rf"{re.escape(str(path))}:(\d+):\d+: (?:.*error:|  required from)"
            lines = {int(line) for line in re.findall(pattern, done.stderr)}
            if not board.drop_broken(text, lines):
                break
        raise SystemExit(f"{done.stderr[-2000:]}\n{file} with its changes does not compile, and no change is to blame")

    def _compile_command(self, path):
        """The command that compiles the source without writing its output; a header is compiled like a source."""
        commands = json.loads((self._build / "compile_commands.json").read_text())
        stem = path.with_suffix(".cpp")
        words = shlex.split(next(entry["command"] for entry in commands if Path(entry["file"]) == stem))
        del words[words.index("-o") : words.index("-o") + 2]
        return [*words[: words.index("-c")], "-x", "c++", path]

    def _build_all(self, complaint):
        programs = sorted({step[0] for steps in self._steps.values() for step in steps})
        self._call(["ninja", "-C", self._build, "-j2", *programs], complaint)

    def _try_unchanged(self):
        for step in sorted({step for steps in self._steps.values() for step in steps}):
            began = time.monotonic()
            if not self._passes(step):
                raise SystemExit(f"{' '.join(step)} fails before anything is planted")
            self._seconds[step] = time.monotonic() - began

    def _passes(self, step, number=0):
        test = subprocess.Popen(
            [self._build / "tests" / step[0], "--abort-after=1", "--no-breaks", *step[1:]], cwd=self._folder,
            env={**os.environ, VARIABLE: str(number)}, preexec_fn=_bounds, stdin=subprocess.DEVNULL,
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        try:
            return test.wait(10 * self._seconds.get(step, 60) + 5) == 0
        except subprocess.TimeoutExpired:
            test.kill()
            test.wait()
            return False

    def _call(self, command, complaint=None):
        done = subprocess.run(command, stdin=subprocess.DEVNULL, capture_output=True, text=True)
        if complaint and done.returncode:
            raise SystemExit(f"{done.stdout}{done.stderr}\n{complaint}")
        return done


def _room(mutant):
    return mutant.file.split("/")[0]


def _bring(source, copy):
    """Copies files that are new or changed, so that a kept folder rebuilds only what changed."""
    if source.is_dir():
        copy.mkdir(exist_ok=True)
        names = {path.name for path in source.iterdir()}
        for stale in (path for path in copy.iterdir() if path.name not in names):
            shutil.rmtree(stale) if stale.is_dir() else stale.unlink()
        for name in names:
            _bring(source / name, copy / name)
    elif not copy.exists() or copy.read_bytes() != source.read_bytes():
        shutil.copy(source, copy)


def _bounds():
    resource.setrlimit(resource.RLIMIT_AS, (_MEMORY, _MEMORY))
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
