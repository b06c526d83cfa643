// SPDX-License-Identifier: GPL-3.0-or-later
// The lines' check for text is core's.
#pragma once

#include "core/utf8.h"
