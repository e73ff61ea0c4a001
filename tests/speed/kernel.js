// What kernel.rs computes, in plain numbers: the rows from the command line; nanoseconds for a row, and the sum.
"use strict";
const B = 0.873, TURN = 20;

function row(at) {
    const bolt = 14 + (at % 997) / 1000;
    const nut = bolt + 0.4;
    const coat = 40 + (at % 61);
    const rate = 0.7 + (at % 350) / 100;

    const play = (nut - (bolt + (4 * coat) / 1000)) * 1000;
    const zinc = 7.2 * coat;
    const ratio = coat / rate;
    const atTurn = TURN ** B;
    const life = ratio <= atTurn ? ratio ** (1 / B) : TURN + (ratio - atTurn) / (B * TURN ** (B - 1));
    return play + zinc + life;
}

function all(rows) {
    let sum = 0;
    for (let at = 0; at < rows; at++) sum += row(at);
    return sum;
}

const rows = Number(process.argv[2]);
const times = Array.from({ length: 21 }, () => {
    const start = process.hrtime.bigint();
    all(rows);
    return Number(process.hrtime.bigint() - start);
}).sort((one, other) => one - other);
console.log(times[10] / rows, all(rows).toFixed(6));
