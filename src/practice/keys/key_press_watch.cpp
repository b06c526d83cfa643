// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/keys/key_press_watch.h"

namespace piolo::practice {

bool KeyPressWatch::pressed(int key, std::int64_t millis) {
    Contact& contact = contacts_[key];
    const bool again = contact.down || (contact.released && millis - *contact.released < bounce_);
    contact.down = true;
    return !again;
}

void KeyPressWatch::released(int key, std::int64_t millis) {
    Contact& contact = contacts_[key];
    if (!contact.down) return; // its press went elsewhere
    contact.down = false;
    contact.released = millis;
}

void KeyPressWatch::forget() { contacts_.clear(); }

} // namespace piolo::practice
