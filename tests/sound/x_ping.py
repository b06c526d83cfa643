# SPDX-License-Identifier: GPL-3.0-or-later
"""Does a window respond? Uses the window system's own ping (_NET_WM_PING, Extended Window Manager Hints 1.3, "Window
Manager Protocols"), which the thread that draws the window has to answer."""
import ctypes
import ctypes.util
import time

CLIENT_MESSAGE, LONG = 33, ctypes.c_long
ANSWERS = 1 << 17 | 1 << 19  # StructureNotify, SubstructureNotify; the third one, Redirect, would make this a window manager


class ClientMessage(ctypes.Structure):
    _fields_ = [("type", ctypes.c_int), ("serial", ctypes.c_ulong), ("send_event", ctypes.c_int),
                ("display", ctypes.c_void_p), ("window", ctypes.c_ulong), ("message_type", ctypes.c_ulong),
                ("format", ctypes.c_int), ("data", LONG * 5)]


class Event(ctypes.Union):
    _fields_ = [("client", ClientMessage), ("pad", LONG * 24)]


class Pinger:
    def __init__(self, display):
        self.x = ctypes.CDLL(ctypes.util.find_library("X11") or "libX11.so.6")
        self.x.XOpenDisplay.restype = ctypes.c_void_p
        self.x.XInternAtom.restype = ctypes.c_ulong
        self.x.XDefaultRootWindow.restype = ctypes.c_ulong
        self.display = ctypes.c_void_p(self.x.XOpenDisplay(display.encode()))
        if not self.display:
            raise SystemExit(f"no display {display}")
        self.root = self.x.XDefaultRootWindow(self.display)
        self.x.XSelectInput(self.display, ctypes.c_ulong(self.root), LONG(ANSWERS))
        self.protocols, self.ping = (self.x.XInternAtom(self.display, name, 0) for name in (b"WM_PROTOCOLS", b"_NET_WM_PING"))
        self.number = 0

    def answers(self, window, within=2.0):
        """Seconds until `window` (a number) responded, or None."""
        self.number += 1
        asked = Event()
        asked.client = ClientMessage(CLIENT_MESSAGE, 0, 1, self.display, window, self.protocols, 32,
                                     (LONG * 5)(self.ping, self.number, window, 0, 0))
        self.x.XSendEvent(self.display, ctypes.c_ulong(window), 0, LONG(0), ctypes.byref(asked))
        self.x.XFlush(self.display)
        began = time.monotonic()
        while time.monotonic() - began < within:
            if self.x.XPending(self.display):
                heard = Event()
                self.x.XNextEvent(self.display, ctypes.byref(heard))
                if heard.client.type == CLIENT_MESSAGE and list(heard.client.data[:2]) == [self.ping, self.number]:
                    return time.monotonic() - began
            else:
                time.sleep(0.005)
        return None

    def close(self):
        self.x.XCloseDisplay(self.display)
