// A standard client, written by others, must find in the stand-in what it finds in the platform.
import assert from 'node:assert/strict';
import { once } from 'node:events';
import { after, before, test } from 'node:test';
import {
    ActionRowBuilder, ButtonBuilder, ButtonStyle, Client, Events, LabelBuilder, ModalBuilder, SlashCommandBuilder,
    TextInputBuilder, TextInputStyle,
} from 'discord.js';
import { StandIn } from './standin.js';

const callback = /^interactions\/\d+\/.+\/callback/;
// What never comes fails, and holds nobody up.
const limit = { timeout: 60_000 };
let standIn;
let client;

before(async () => {
    standIn = await StandIn.start();
    client = new Client({ intents: [], rest: { api: standIn.api } });
    client.on(Events.Error, error => assert.fail(error));
    const ready = once(client, Events.ClientReady);
    await client.login(standIn.token);
    await ready;
});

after(async () => {
    await client?.destroy();
    await standIn?.stop();
});

async function interaction(order) {
    const arrived = once(client, Events.InteractionCreate);
    standIn.order(order);
    return (await arrived)[0];
}

test('it logs in and knows itself', () => {
    assert.equal(client.user.username, 'crewbot');
    assert.equal(client.application.id, client.user.id);
});

test('it registers commands and reads them back', limit, async () => {
    const rig = new SlashCommandBuilder().setName('rig').setDescription('Rigs')
        .addSubcommand(plan => plan.setName('plan').setDescription('Plan a rig')
            .addStringOption(species => species.setName('species').setDescription('The fish').setRequired(true)));
    await client.application.commands.set([rig]);
    const registered = await client.application.commands.fetch();
    assert.deepEqual([...registered.values()].map(command => command.name), ['rig']);
});

test('a command reaches it whole and its reply is taken', limit, async () => {
    const command = await interaction('command rig plan species=walleye');
    assert.ok(command.isChatInputCommand() && command.inGuild());
    assert.equal(command.options.getSubcommand(), 'plan');
    assert.equal(command.options.getString('species'), 'walleye');
    await command.reply({
        content: 'A palomar.',
        components: [new ActionRowBuilder().addComponents(
            new ButtonBuilder().setCustomId('why').setLabel('Why').setStyle(ButtonStyle.Secondary))],
    });
    const answer = await standIn.request('POST', callback);
    assert.equal(answer.type, 4);
    assert.equal(answer.data.content, 'A palomar.');
});

test('a deferred reply is edited', limit, async () => {
    const command = await interaction('command rig plan species=perch');
    await command.deferReply();
    assert.equal((await standIn.request('POST', callback)).type, 5);
    await command.editReply('Took a while.');
    assert.equal((await standIn.request('PATCH', /messages\/@original$/)).content, 'Took a while.');
});

test('autocomplete names the option being written', limit, async () => {
    const writing = await interaction('autocomplete rig plan species=wal');
    assert.ok(writing.isAutocomplete());
    assert.deepEqual([writing.options.getFocused(true).name, writing.options.getFocused()], ['species', 'wal']);
    await writing.respond([{ name: 'walleye', value: 'walleye' }]);
    assert.equal((await standIn.request('POST', callback)).type, 8);
});

test('a button and a list say what was pressed and on which message', limit, async () => {
    const press = await interaction('button why');
    assert.ok(press.isButton());
    assert.equal(press.customId, 'why');
    assert.equal(press.message.author.id, client.user.id);
    await press.update('Because.');
    assert.equal((await standIn.request('POST', callback)).type, 7);

    const choice = await interaction('select list one');
    assert.ok(choice.isStringSelectMenu());
    assert.deepEqual(choice.values, ['one']);
});

test('a form opens and comes back filled in', limit, async () => {
    const command = await interaction('command rig plan');
    await command.showModal(new ModalBuilder().setCustomId('form').setTitle('/rig plan').addLabelComponents(
        new LabelBuilder().setLabel('In your own words').setTextInputComponent(
            new TextInputBuilder().setCustomId('ask').setStyle(TextInputStyle.Paragraph))));
    assert.equal((await standIn.request('POST', callback)).type, 9);

    const form = await interaction('modal form ask=perch');
    assert.ok(form.isModalSubmit());
    assert.equal(form.fields.getTextInputValue('ask'), 'perch');
});

test('a message menu brings the message along', limit, async () => {
    const menu = await interaction('menu anyone for pike? 12ft');
    assert.ok(menu.isMessageContextMenuCommand());
    assert.equal(menu.targetMessage.content, 'anyone for pike? 12ft');
});

for (const fault of ['reconnect', 'cut']) {
    test(`after "${fault}" it resumes and goes on`, limit, async () => {
        const resumed = once(client, Events.ShardResume);
        standIn.order(fault);
        await resumed;
        const command = await interaction('command rig plan species=burbot');
        assert.equal(command.options.getString('species'), 'burbot');
    });
}
