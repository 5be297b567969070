// An SMSC that loads whoever binds to it, on npm's `smpp`: node smsc.js MESSAGES OUTSTANDING
// Prints the port that it listens on, then, when all are answered, figures as JSON.
'use strict';

const smpp = require('smpp');

const messages = Number(process.argv[2]);
const outstanding = Number(process.argv[3]);
const texts = ['20 L cloudy, bleach 5%', '40 litres bleach 4%', 'how much 3.5% bleach for 10 L clear water', '2 gallons cloudy 1% bleach'];

const begun = new Map(); // by who asked: when
const waits = [];
let next = 0;
let answered = 0;
let beginning = 0;
let session = null;

const now = () => Number(process.hrtime.bigint()) / 1e6;

function ask() {
  while (next < messages && begun.size < outstanding) {
    const person = String(255700000000 + next);
    const text = texts[next % texts.length];
    next += 1;
    begun.set(person, now());
    session.deliver_sm({
      source_addr_ton: 1,
      source_addr_npi: 1,
      source_addr: person,
      destination_addr: '4321',
      data_coding: 0,
      short_message: Buffer.from(text, 'ascii'),
    });
  }
}

function finish() {
  const seconds = (now() - beginning) / 1000;
  waits.sort((a, b) => a - b);
  const at = (part) => waits[Math.min(waits.length - 1, Math.floor(waits.length * part))];
  console.log(JSON.stringify({
    answered,
    seconds,
    per_second: answered / seconds,
    p50_ms: at(0.5),
    p99_ms: at(0.99),
  }));
  process.exit(0);
}

const server = smpp.createServer((connected) => {
  connected.on('error', (error) => { console.error(String(error)); process.exit(1); });
  connected.on('bind_transceiver', (pdu) => {
    connected.send(pdu.response({ system_id: 'load' }));
    session = connected;
    beginning = now();
    ask();
  });
  connected.on('enquire_link', (pdu) => connected.send(pdu.response()));
  connected.on('unbind', (pdu) => { connected.send(pdu.response()); connected.close(); });
  connected.on('submit_sm', (pdu) => {
    connected.send(pdu.response({ message_id: String(answered) }));
    const began = begun.get(pdu.destination_addr);
    if (began === undefined) return; // a further part
    begun.delete(pdu.destination_addr);
    waits.push(now() - began);
    answered += 1;
    if (answered === messages) finish();
    ask();
  });
});
server.listen(0, '127.0.0.1', () => console.log(JSON.stringify({ port: server.address().port })));
