// An SMSC for tests, on npm's `smpp`: a JSON object a line, commands on standard input, events on
// standard output. It knows nothing of the program under test.
//
//   node smsc.js            with NODE_PATH where `smpp` is installed
//   MATONE_TEST_KEY, MATONE_TEST_CERT: PEM files; with them it speaks TLS
'use strict';

const fs = require('fs');
const readline = require('readline');
const smpp = require('smpp');

const tell = (event) => process.stdout.write(JSON.stringify(event) + '\n');

let bound = null; // the session that is bound
let sessions = 0;
let messages = 0;
let hexadecimal = false; // how message ids are written in submit_sm_resp
let statuses = []; // what the next submit_sm are answered
let silent = false; // submit_sm are not answered at all
let refuse = 0; // what the next bind_transceiver is answered

function octets(pdu) {
  // The library decodes; what was on the wire is what counts.
  const message = pdu.short_message || {};
  const udh = Array.isArray(message.udh) ? Buffer.concat(message.udh) : message.udh;
  return { text: message.message, udh: udh ? udh.toString('hex') : null };
}

function submitted(session, pdu) {
  const status = statuses.length ? statuses.shift() : 0;
  const number = status === 0 && !silent ? ++messages : 0;
  const name = hexadecimal ? (number + 0xabc0).toString(16).toUpperCase() : String(number).padStart(10, '0');
  tell({
    event: 'submit_sm',
    status,
    name,
    from: pdu.source_addr,
    from_ton: pdu.source_addr_ton,
    to: pdu.destination_addr,
    to_ton: pdu.dest_addr_ton,
    to_npi: pdu.dest_addr_npi,
    esm_class: pdu.esm_class,
    data_coding: pdu.data_coding,
    registered_delivery: pdu.registered_delivery,
    sequence: pdu.sequence_number,
    raw: pdu.raw,
    ...octets(pdu),
  });
  if (silent) return;
  session.send(pdu.response({ command_status: status, message_id: name }));
}

function serve(session) {
  const number = ++sessions;
  session.on('error', (error) => tell({ event: 'error', session: number, error: String(error) }));
  session.on('close', () => {
    if (bound === session) bound = null;
    tell({ event: 'closed', session: number });
  });
  session.on('bind_transceiver', (pdu) => {
    const status = refuse;
    refuse = 0;
    if (status === 0) bound = session;
    session.send(pdu.response({ command_status: status, system_id: 'smsc' }));
    tell({
      event: 'bound',
      session: number,
      status,
      system_id: pdu.system_id,
      password: pdu.password,
      system_type: pdu.system_type,
      interface_version: pdu.interface_version,
    });
  });
  session.on('submit_sm', (pdu) => submitted(session, pdu));
  session.on('enquire_link', (pdu) => {
    session.send(pdu.response());
    tell({ event: 'enquire_link', session: number });
  });
  session.on('unbind', (pdu) => {
    tell({ event: 'unbind', session: number });
    session.send(pdu.response());
    session.close();
  });
  for (const command of ['generic_nack', 'enquire_link_resp', 'unbind_resp']) {
    session.on(command, (pdu) =>
      tell({ event: command, session: number, status: pdu.command_status, sequence: pdu.sequence_number }));
  }
}

const commands = {
  // A deliver_sm with any of the library's fields; `hex` is the message in octets, `udh` a header.
  deliver({ tag, fields, text, hex, udh, payload }) {
    const options = { ...fields };
    const message = hex === undefined ? text : Buffer.from(hex, 'hex');
    const whole = udh ? { udh: Buffer.from(udh, 'hex'), message } : message;
    if (payload) options.message_payload = whole;
    else options.short_message = whole;
    bound.deliver_sm(options, (pdu) =>
      tell({ event: 'deliver_sm_resp', tag, status: pdu.command_status, command: pdu.command }));
  },
  answer({ with: list }) { statuses = statuses.concat(list); },
  ids({ as }) { hexadecimal = as === 'hexadecimal'; },
  silence({ on }) { silent = on; },
  refuse({ status }) { refuse = status; },
  enquire() { bound.enquire_link(); },
  unbind() { bound.unbind(); },
  close() { bound.close(); },
  destroy() { bound.destroy(); },
  quit() { process.exit(0); },
};

const { MATONE_TEST_KEY: key, MATONE_TEST_CERT: cert } = process.env;
const options = key ? { key: fs.readFileSync(key), cert: fs.readFileSync(cert) } : {};
// Every PDU's short_message as it was on the wire, before the library reads it.
const decode = smpp.PDU.prototype.fromBuffer;
smpp.PDU.prototype.fromBuffer = function (buffer) {
  decode.call(this, buffer);
  if (this.command === 'submit_sm') this.raw = buffer.toString('hex');
};
const server = smpp.createServer(options, serve);
server.on('error', (error) => tell({ event: 'error', error: String(error) }));
server.listen(0, '127.0.0.1', () => tell({ event: 'listening', port: server.address().port }));

readline.createInterface({ input: process.stdin })
  .on('line', (line) => {
    const command = JSON.parse(line);
    try {
      commands[command.do](command);
      tell({ event: 'done', did: command.do });
    } catch (error) {
      tell({ event: 'error', error: String(error) });
    }
  })
  .on('close', () => process.exit(0));
