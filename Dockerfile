# Two steps: build with all packages, run with those alone that the service needs.
FROM node:20-bookworm-slim AS build
WORKDIR /build
COPY package.json package-lock.json .npmrc ./
RUN npm ci --ignore-scripts --no-audit --no-fund
COPY tsconfig.json tsconfig.build.json ./
COPY src src
COPY profiles profiles
RUN npm run build && npm prune --omit=dev --ignore-scripts

FROM node:20-bookworm-slim
ENV NODE_ENV=production HOST=0.0.0.0 PORT=3000 DISSECTION_DATA_DIR=/data
WORKDIR /service
COPY --from=build --chown=root:root /build/node_modules node_modules
COPY --from=build --chown=root:root /build/dist dist
COPY --chown=root:root package.json LICENSE ./
RUN mkdir /data && chown node:node /data && chmod 700 /data
USER node
VOLUME /data
EXPOSE 3000
HEALTHCHECK --interval=10s --timeout=5s --start-period=20s --retries=6 \
  CMD ["node", "-e", "fetch('http://127.0.0.1:3000/livez').then((r) => process.exit(r.ok ? 0 : 1), () => process.exit(1))"]
ENTRYPOINT ["node", "dist/src/main.js"]
CMD ["serve"]
