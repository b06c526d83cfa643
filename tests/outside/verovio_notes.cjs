// SPDX-License-Identifier: GPL-3.0-or-later
// Scores as Verovio reads them. Standard input: [{"name", "xml"}]. Standard output: the same names with "mei" (its own
// encoding of the score), "map" (its timemap: when each note sounds, in quarters) and "midi" (base64).
"use strict";
const verovio = require("verovio");

verovio.module.onRuntimeInitialized = () => {
    const scores = JSON.parse(require("fs").readFileSync(0, "utf8"));
    const read = scores.map(({ name, xml }) => {
        const toolkit = new verovio.toolkit();
        toolkit.setOptions({ breaks: "none", xmlIdSeed: 1 });
        const loaded = toolkit.loadData(xml);
        const one = { name, loaded, mei: toolkit.getMEI({}), map: toolkit.renderToTimemap({}), midi: toolkit.renderToMIDI() };
        toolkit.destroy();
        return one;
    });
    process.stdout.write(JSON.stringify(read));
};
