// The yardstick of the measurements: a bot by a standard client that answers everybody with one fixed card.
import { Client, Events } from 'discord.js';

const card = {
    embeds: [{ title: 'Walleye rig', description: 'A palomar, and a long breath.' }],
    allowedMentions: { parse: [] },
};
const api = process.env.CREWBOT_DISCORD__APIBASEADDRESS.replace(/\/v10\/?$/, '');
const client = new Client({ intents: [], rest: { api, globalRequestsPerSecond: Infinity } });
client.on(Events.InteractionCreate, command => command.reply(card));
await client.login(process.env.CREWBOT_DISCORD__TOKEN);
