// Starts the stand-in as a process of its own and talks to it by lines.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const program = process.env.CREWBOT_STANDIN
    ?? fileURLToPath(new URL('../CrewBot.Discord.StandIn/bin/Debug/net10.0/CrewBot.Discord.StandIn.dll', import.meta.url));

export class StandIn {
    #process;
    #lines = [];
    #waiting = [];

    static async start() {
        const standIn = new StandIn();
        standIn.#process = spawn('dotnet', [program], { stdio: ['pipe', 'pipe', 'inherit'] });
        createInterface({ input: standIn.#process.stdout }).on('line', line => {
            standIn.#lines.push(line);
            standIn.#waiting.splice(0).forEach(resolve => resolve());
        });
        standIn.api = (await standIn.line('api ')).split(' ')[1].replace(/\/v10\/$/, '');
        standIn.token = (await standIn.line('token ')).split(' ')[1];
        return standIn;
    }

    order(line) {
        this.#process.stdin.write(`${line}\n`);
    }

    /** The next line that starts like this; those before it are passed over. */
    async line(start) {
        for (;;) {
            while (this.#lines.length > 0) {
                const line = this.#lines.shift();
                if (line.startsWith(start)) {
                    return line;
                }
            }

            await new Promise(resolve => this.#waiting.push(resolve));
        }
    }

    /** The next request with this method and a path of this form; gives its JSON body. */
    async request(method, path) {
        for (;;) {
            const [, made, where, ...body] = (await this.line(`request ${method} `)).split(' ');
            if (made === method && path.test(where)) {
                return JSON.parse(body.join(' '));
            }
        }
    }

    async stop() {
        this.#process.stdin.end();
        await once(this.#process, 'exit');
    }
}
